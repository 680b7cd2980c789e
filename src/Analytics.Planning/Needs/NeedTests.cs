using Analytics.Metrics.Catalogue;

namespace Analytics.Planning.Needs;

/// <summary>The tests that tell of needs, in one order for reports and plans: the first of a quality speaks for it, the later ones may object.</summary>
public static class NeedTests
{
    /// <summary>Identifiers of the metrics, in order (our choice, no source).</summary>
    public static IReadOnlyList<string> Order { get; } =
    [
        "back_squat_1rm", "bench_press_1rm", "cmj_height", "power_clean_1rm", "standing_long_jump", "drop_jump_rsi", "hurdle_rsi",
        "sprint_10yd", "sprint_10m", "max_speed", "pro_agility", "throw_seated_chest", "throw_standing_chest",
    ];

    /// <summary>Those of some metrics that tell of needs, in order.</summary>
    /// <param name="metrics">Metrics.</param>
    public static IEnumerable<Metric> Among(IEnumerable<Metric> metrics)
        => metrics.Select(m => (Metric: m, Place: PlaceOf(m.Id))).Where(m => m.Place < Order.Count).OrderBy(m => m.Place).Select(m => m.Metric);

    /// <summary>Place in the order; behind all of them for any other metric.</summary>
    internal static int PlaceOf(string metricId)
    {
        for (var i = 0; i < Order.Count; i++)
            if (Order[i] == metricId) return i;
        return Order.Count;
    }
}
