using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Strength;
using Analytics.Metrics.Trials;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.TestingDay;

/// <summary>What stands behind a 1RM that was not lifted: the set, and how far the equations disagree.</summary>
internal static class EstimatedLift
{
    public static string? Note(DayContext day, Metric metric, string athleteId)
    {
        if (!metric.Id.EndsWith("_1rm", StringComparison.Ordinal) || day.DayOf(athleteId) is not { } trials) return null;
        var lift = metric.Id[..^4];
        if (DayOneRepMax.From(trials.Of<LiftSet>().Where(s => s.Lift == lift)) is not { IsMeasured: false } result) return null;
        var unit = day.Unit(metric);
        var set = $"from {unit.Text(result.Load.Kilograms)} \u00d7 {Figures.Plain(result.EffectiveRepetitions, 0)}";
        return result.Spread is { } spread
            ? $"{set}, equations {Figures.Plain(unit.Of(spread.Lowest.Kilograms), unit.Decimals)} to {Figures.Plain(unit.Of(spread.Highest.Kilograms), unit.Decimals)}"
            : set;
    }
}
