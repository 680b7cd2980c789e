using Analytics.Metrics.Catalogue;
using Analytics.Notebooks.Look;
using Analytics.Quantities;
using Analytics.Season;
using Analytics.Statistics;

namespace Analytics.Notebooks.Units;

/// <summary>The unit a report shows a metric in, which is the coach's unit where the season names one.</summary>
/// <param name="Symbol">Unit symbol, for example <c>lb</c>.</param>
/// <param name="PerCatalogueUnit">Shown units in one unit of the catalogue.</param>
/// <param name="Decimals">Decimals shown.</param>
public sealed record ShownUnit(string Symbol, double PerCatalogueUnit, int Decimals)
{
    /// <summary>The unit for a metric under the season's choices.</summary>
    /// <param name="metric">The metric.</param>
    /// <param name="settings">The season's settings.</param>
    public static ShownUnit For(Metric metric, SeasonSettings settings)
    {
        ArgumentNullException.ThrowIfNull(metric);
        ArgumentNullException.ThrowIfNull(settings);
        return metric.Unit switch
        {
            "kg" when settings.MassUnit == "lb" => new("lb", 1 / UnitFactors.KilogramsPerPound, 0),
            "cm" when settings.JumpUnit == "in" => new("in", 0.01 / UnitFactors.MetresPerInch, 1),
            "m" when settings.JumpUnit == "in" => new("ft", 1 / UnitFactors.MetresPerFoot, 1),
            // A reactive strength index also has the unit m/s, but it is no running speed.
            "m/s" when metric.Quality == Quality.MaximalSpeed => Speed(settings.SpeedUnit, metric),
            // A pure number.
            "1" => new("", 1, metric.Decimals),
            _ => new(metric.Unit, 1, metric.Decimals),
        };
    }

    /// <summary>A value of the catalogue in this unit.</summary>
    /// <param name="value">In the metric's catalogue unit.</param>
    public double Of(double value) => value * PerCatalogueUnit;

    /// <summary>A value of the catalogue in this unit; nothing stays nothing.</summary>
    /// <param name="value">In the metric's catalogue unit.</param>
    public double? Of(double? value) => value * PerCatalogueUnit;

    /// <summary>An interval of the catalogue in this unit.</summary>
    /// <param name="interval">In the metric's catalogue unit.</param>
    public Interval? Of(Interval? interval) => interval?.Times(PerCatalogueUnit);

    /// <summary>The value with unit as report text.</summary>
    /// <param name="value">In the metric's catalogue unit.</param>
    public string Text(double? value) => Figures.Plain(Of(value), Decimals, Symbol);

    /// <summary>A change with its interval and unit as report text.</summary>
    /// <param name="change">In the metric's catalogue unit.</param>
    /// <param name="interval">In the metric's catalogue unit; null when no error is known.</param>
    public string ChangeText(double? change, Interval? interval)
        => Figures.SignedInterval(Of(change), Of(interval), DecimalsFor([interval]), Symbol);

    /// <summary>Decimals that show on which side of zero every limit lies: one more where a limit would round to zero.</summary>
    /// <param name="intervals">Intervals of changes, in the metric's catalogue unit.</param>
    public int DecimalsFor(IEnumerable<Interval?> intervals)
        => intervals.OfType<Interval>().SelectMany(i => new[] { Of(i.Low), Of(i.High) }).Any(RoundsToZero) ? Decimals + 1 : Decimals;

    private bool RoundsToZero(double limit) => limit != 0 && Math.Abs(limit) < 0.5 * Math.Pow(10, -Decimals);

    private static ShownUnit Speed(string unit, Metric metric)
        => Analytics.Quantities.Speed.Units.FirstOrDefault(u => u.Symbol == unit) is { } known
            ? new(known.Symbol, 1 / known.ToSi, 1)
            : new(metric.Unit, 1, metric.Decimals);
}
