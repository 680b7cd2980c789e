using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Association;

/// <summary>Effective number of pairs behind the interval of a repeated-measures correlation; both are in print.</summary>
public enum RepeatedMeasuresInterval
{
    /// <summary>df + 2, by analogy with an ordinary correlation whose df is n − 2. The default.</summary>
    DegreesPlusTwo,

    /// <summary>df itself: slightly wider; given by older software [bakdash2017].</summary>
    Degrees,
}

/// <summary>
/// Correlation within athletes: do the two values of one athlete go up and down together, whatever the differences between athletes
/// [blandaltman1995; bakdash2017]. One slope for all, each athlete at his own level.
/// </summary>
public sealed record RepeatedMeasuresCorrelation : Result
{
    private RepeatedMeasuresCorrelation()
    {
    }

    /// <summary>sign(slope) √(SSx/(SSx + SSe)).</summary>
    public required double Value { get; init; }

    /// <summary>Interval on Fisher's scale; null below 2 degrees of freedom or at exactly ±1.</summary>
    public required Interval? Interval { get; init; }

    /// <summary>Version of the interval.</summary>
    public required RepeatedMeasuresInterval Version { get; init; }

    /// <summary>Pairs − athletes − 1.</summary>
    public required int DegreesOfFreedom { get; init; }

    /// <summary>Common slope of y on x within athletes.</summary>
    public required double Slope { get; init; }

    /// <summary>Squares of y within athletes that x explains.</summary>
    public required double ExplainedSquares { get; init; }

    /// <summary>Squares of y within athletes that are left.</summary>
    public required double ResidualSquares { get; init; }

    /// <summary>F with 1 and df degrees of freedom; null when nothing is left.</summary>
    public double? F => ResidualSquares > 0 ? ExplainedSquares / (ResidualSquares / DegreesOfFreedom) : null;

    /// <summary>Two-sided p of F; 0 when the pairs of every athlete lie exactly on lines of one slope.</summary>
    public double P => F is { } f ? 2 * StudentLaw.Cdf(-Math.Sqrt(f), DegreesOfFreedom) : 0;

    /// <summary>Pairs used: of athletes with at least two.</summary>
    public required int Pairs { get; init; }

    /// <summary>Athletes used.</summary>
    public required int Athletes { get; init; }

    /// <summary>Athletes with one pair only: they cannot speak about change within, and are counted here, not lost.</summary>
    public required int WithoutRepeat { get; init; }

    /// <summary>From pairs with the athlete of each.</summary>
    /// <param name="athletes">Whose each pair is; at least two athletes with two pairs or more.</param>
    /// <param name="x">Finite values that vary within athletes.</param>
    /// <param name="y">The other value of each pair, also varying within athletes.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <param name="version">Version of the interval.</param>
    /// <exception cref="ArgumentException">One athlete, no degrees of freedom, or nothing varies within athletes.</exception>
    public static RepeatedMeasuresCorrelation Of<T>(
        IReadOnlyList<T> athletes, IReadOnlyList<double> x, IReadOnlyList<double> y, double level = 0.95,
        RepeatedMeasuresInterval version = RepeatedMeasuresInterval.DegreesPlusTwo)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(athletes);
        Paired.Require(x, y, 2);
        Paired.SameLength(x, athletes, nameof(athletes));
        Require.Share(level, nameof(level));
        var groups = Enumerable.Range(0, x.Count).GroupBy(i => athletes[i]).Select(g => g.ToArray()).ToList();
        var repeated = groups.Where(g => g.Length > 1).ToList();
        if (repeated.Count < 2)
        {
            throw new ArgumentException(
                $"{repeated.Count} of {groups.Count} athletes have two pairs or more; at least 2 are needed. For one athlete use an ordinary correlation.", nameof(athletes));
        }

        var within = repeated.Select(g => Paired.Sums([.. g.Select(i => x[i])], [.. g.Select(i => y[i])])).ToList();
        double xx = within.Sum(s => s.XX), yy = within.Sum(s => s.YY), xy = within.Sum(s => s.XY);
        Vary(xx, x, nameof(x));
        Vary(yy, y, nameof(y));
        var pairs = within.Sum(s => s.N);
        var df = pairs - repeated.Count - 1;
        var r = Math.Clamp(xy / Math.Sqrt(xx) / Math.Sqrt(yy), -1, 1);
        return new()
        {
            Value = r,
            Interval = df < 1 ? null : FisherInterval.Of(r, version == RepeatedMeasuresInterval.Degrees ? df : df + 2, level),
            Version = version,
            DegreesOfFreedom = df,
            Slope = xy / xx,
            ExplainedSquares = r * r * yy,
            ResidualSquares = (1 - r) * (1 + r) * yy,
            Pairs = pairs,
            Athletes = repeated.Count,
            WithoutRepeat = groups.Count - repeated.Count,
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Correlation within athletes", "repeated-measures correlation [blandaltman1995; bakdash2017], interval on Fisher's scale with " + (Version == RepeatedMeasuresInterval.Degrees ? "df" : "df + 2") + " effective pairs",
    [
        new("correlation", Value) { Interval = Interval, DegreesOfFreedom = DegreesOfFreedom },
        new("p", P),
        new("common slope", Slope),
    ])
    {
        Basis = FormattableString.Invariant($"{Pairs} pairs of {Athletes} athletes") + (WithoutRepeat > 0 ? FormattableString.Invariant($"; {WithoutRepeat} with one pair left out") : string.Empty),
        Remarks = Interval is null ? ["No interval: too few degrees of freedom, or the pairs lie exactly on lines."] : [],
    };

    private static void Vary(double squares, IReadOnlyList<double> values, string name)
    {
        var size = values.Max(Math.Abs);
        if (!(squares > 1e-24 * size * size * values.Count))
            throw new ArgumentException($"{name} does not vary within any athlete; a correlation within athletes needs values that change.", name);
    }
}
