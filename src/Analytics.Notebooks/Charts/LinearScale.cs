using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>Maps values to percent of a drawing's width and knows the ticks.</summary>
internal sealed class LinearScale
{
    private const double LabelPixels = 12;
    private const double Gap = 12;

    private LinearScale(double low, double high, double step, IReadOnlyList<double> ticks, bool signed)
        => (Low, High, Decimals, Ticks, Signed) = (low, high, RoundTicks.Decimals(step), ticks, signed);

    public double Low { get; }

    public double High { get; }

    public IReadOnlyList<double> Ticks { get; }

    public int Decimals { get; }

    public bool Signed { get; }

    /// <summary>A scale that holds all values with some air, its labels clear of each other in the narrowest drawing.</summary>
    /// <param name="values">Values to hold; those that cannot be drawn are left out.</param>
    /// <param name="narrowest">Narrowest drawing in pixels.</param>
    /// <param name="signed">Whether tick labels carry a plus sign.</param>
    /// <param name="air">Share of the range left free at each side.</param>
    /// <param name="mostTicks">Most ticks wanted however wide the drawing.</param>
    public static LinearScale Over(IEnumerable<double> values, double narrowest, bool signed = false, double air = 0.06, int mostTicks = 6)
    {
        var drawn = values.Where(CanDraw).ToArray();
        var (low, high) = drawn.Length == 0 ? (0.0, 1.0) : (drawn.Min(), drawn.Max());
        if (high - low <= Math.Abs(high) * 1e-9)
        {
            var half = high == 0 ? 1 : Math.Abs(high) * 0.05;
            (low, high) = (low - half, high + half);
        }
        var pad = (high - low) * air;
        (low, high) = (low - pad, high + pad);
        for (var most = Math.Max(mostTicks, 2); ; most--)
        {
            var (step, ticks) = RoundTicks.Between(low, high, most);
            var scale = new LinearScale(low, high, step, ticks, signed);
            if (most == 2 || ticks.Sum(t => TextWidth.Of(scale.Label(t), LabelPixels) + Gap) <= narrowest) return scale;
        }
    }

    /// <summary>Whether a value has a place on an axis.</summary>
    public static bool CanDraw(double value) => double.IsFinite(value) && Math.Abs(value) < 1e100;

    /// <summary>Place of a value in percent of the width.</summary>
    public double Percent(double value) => (value - Low) / (High - Low) * 100;

    /// <summary>Text of a tick.</summary>
    public string Label(double tick) => Signed ? Figures.Signed(tick, Decimals) : Figures.Plain(tick, Decimals);
}
