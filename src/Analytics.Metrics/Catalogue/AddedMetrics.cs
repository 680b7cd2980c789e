namespace Analytics.Metrics.Catalogue;

/// <summary>Metrics that began as a sketch, each in a file of its own. <c>analytics promote</c> adds the next one at the end.</summary>
public static class AddedMetrics
{
    /// <summary>All of them, in the order they came.</summary>
    public static IReadOnlyList<AddedMetric> Entries { get; } =
    [
    ];

    /// <summary>The metrics themselves.</summary>
    public static IReadOnlyList<Metric> All { get; } = [.. Entries.Select(e => e.Metric)];
}
