using Analytics.Metrics.Catalogue;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Training;

/// <summary>Units in which the target of a metric may be written: those the season's tables take for such a quantity, else that of the catalogue.</summary>
internal sealed class TargetUnits
{
    // Numbers that mean the same with and without their unit.
    private static readonly string[] Bare = ["1", "kg/kg"];

    private readonly Unit catalogue;

    private TargetUnits(Unit catalogue, IReadOnlyList<Unit> accepted, bool mayBeEmpty) => (this.catalogue, Accepted, MayBeEmpty) = (catalogue, accepted, mayBeEmpty);

    /// <summary>Units, the commonest first.</summary>
    public IReadOnlyList<Unit> Accepted { get; }

    /// <summary>Whether the metric is a pure number, so that none is needed.</summary>
    public bool MayBeEmpty { get; }

    /// <summary>The units in words: "lb or kg".</summary>
    public string Words => string.Join(" or ", Accepted.Select(u => u.Symbol));

    /// <summary>Those of a metric.</summary>
    public static TargetUnits Of(Metric metric) => metric.Unit switch
    {
        "kg" => Among(metric, UnitSets.Loads),
        "cm" or "m" => Among(metric, UnitSets.Distances),
        "s" => Among(metric, UnitSets.Times),
        "W" => Among(metric, Power.Units),
        // A reactive strength index is in m/s too, but it is no running speed.
        "m/s" when metric.Quality != Quality.ReactiveAbility => Among(metric, Speed.Units),
        _ => new(new(metric.Unit, 1), [new(metric.Unit, 1)], Bare.Contains(metric.Unit)),
    };

    /// <summary>The unit that is written; null when it is none of these.</summary>
    public Unit? Find(string text)
        => text.Length is 0 && MayBeEmpty ? Accepted[0] : Accepted.FirstOrDefault(u => string.Equals(u.Symbol, text, StringComparison.OrdinalIgnoreCase));

    /// <summary>The nearest of these to a word; null when none is near.</summary>
    public string? Near(string text) => NearWord.Of(text, Accepted.Select(u => u.Symbol));

    /// <summary>A number of a unit in that of the catalogue.</summary>
    public double InCatalogue(double number, Unit unit) => unit.Symbol == catalogue.Symbol ? number : catalogue.NumberOf(unit.SiOf(number));

    /// <summary>A number of the catalogue in a unit.</summary>
    public double In(Unit unit, double number) => unit.Symbol == catalogue.Symbol ? number : unit.NumberOf(catalogue.SiOf(number));

    private static TargetUnits Among(Metric metric, IReadOnlyList<Unit> units) => new(units.Single(u => u.Symbol == metric.Unit), units, mayBeEmpty: false);
}
