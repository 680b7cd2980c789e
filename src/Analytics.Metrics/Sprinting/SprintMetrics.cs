using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Sprinting;

/// <summary>Every sprint and change-of-direction metric, in report order.</summary>
public static class SprintMetrics
{
    /// <summary>All of them; the error of a fitted value is that of its own run.</summary>
    public static IReadOnlyList<Metric> All { get; } = Make(null);

    /// <summary>
    /// The same metrics with the error of fitted values pooled over a squad (see <see cref="Fits.SplitErrorPool"/>); the values are the same.
    /// </summary>
    /// <param name="days">Days of one squad, timed by the same gates and staff.</param>
    public static IReadOnlyList<Metric> PooledOver(IEnumerable<AthleteDay> days)
    {
        ArgumentNullException.ThrowIfNull(days);
        return Make(SplitErrorPools.Of(days.SelectMany(d => d.Of<SprintTrial>())));
    }

    private static IReadOnlyList<Metric> Make(SplitErrorPools? pools) =>
    [
        .. SplitTimeMetrics.All(pools),
        .. SprintFitMetrics.All(pools),
        .. AgilityMetrics.All,
    ];
}
