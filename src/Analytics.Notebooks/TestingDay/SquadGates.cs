using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;

namespace Analytics.Notebooks.TestingDay;

/// <summary>
/// The sprint times in the unit the squad measures in: a squad with gates at metres needs no time predicted for a gate at
/// yards beside the measured one.
/// </summary>
internal static class SquadGates
{
    private static readonly Dictionary<string, string> s_metreOfYard = new(StringComparer.Ordinal)
    {
        ["sprint_10yd"] = "sprint_10m",
        ["sprint_20yd"] = "sprint_20m",
        ["sprint_40yd"] = "sprint_40m",
    };

    /// <summary>The metrics without yard times that nobody ran through a gate for, where the metre beside it was measured.</summary>
    /// <param name="metrics">All metrics.</param>
    /// <param name="days">The athletes of each day shown.</param>
    public static IEnumerable<Metric> Of(IReadOnlyCollection<Metric> metrics, IReadOnlyCollection<IReadOnlyCollection<AthleteDay>> days)
        => metrics.Where(m => !(s_metreOfYard.TryGetValue(m.Id, out var metre)
            && metrics.FirstOrDefault(o => o.Id == metre) is { } other
            && days.Any(d => IsMeasured(other, d)) && !days.Any(d => IsMeasured(m, d))));

    private static bool IsMeasured(Metric metric, IReadOnlyCollection<AthleteDay> day) => day.SelectMany(metric.FromTrials).Any(v => v.Doubt is null);
}
