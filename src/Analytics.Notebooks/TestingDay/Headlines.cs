using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;

namespace Analytics.Notebooks.TestingDay;

/// <summary>The few measures a head coach reads first: one for each link of the chain from strength to contact.</summary>
internal static class Headlines
{
    private const int Fewest = 3;

    private static readonly string[][] Links =
    [
        ["back_squat_1rm", "bench_press_1rm", "power_clean_1rm"],
        ["cmj_height", "standing_long_jump", "sj_height"],
        ["sprint_10yd", "sprint_10m", "sprint_20yd", "sprint_20m"],
        ["momentum_10yd"],
    ];

    /// <summary>
    /// The first measure of each link that enough athletes did on the day. One that was measured goes before one that is
    /// doubtful for all, such as a time at a gate that was not there. A squad of one or two has headlines too.
    /// </summary>
    public static IReadOnlyList<Metric> Of(DayContext day)
    {
        var fewest = Math.Clamp(day.Today.Athletes.Count(a => a.Trials.Count > 0), 1, Fewest);
        return [.. Links.Select(link => First(day, link, fewest)).OfType<Metric>()];
    }

    private static Metric? First(DayContext day, string[] link, int fewest)
    {
        var done = link.Select(day.Metric).OfType<Metric>().Select(m => (Metric: m, MetricDay.Of(m, day.Today.Athletes).Values)).Where(m => m.Values.Count >= fewest).ToList();
        return (done.Find(m => m.Values.Count(v => v.Doubts.Count == 0) >= fewest) is { Metric: { } sure } ? sure : null) ?? done.FirstOrDefault().Metric;
    }
}
