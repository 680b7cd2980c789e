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

    /// <summary>The first measure of each link that enough athletes did on the day.</summary>
    public static IReadOnlyList<Metric> Of(DayContext day)
        => [.. Links.Select(link => link.Select(day.Metric).OfType<Metric>().FirstOrDefault(m => MetricDay.Of(m, day.Today.Athletes).Values.Count >= Fewest)).OfType<Metric>()];
}
