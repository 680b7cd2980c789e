namespace Analytics.Planning.Needs;

/// <summary>A target the coach has set for one test.</summary>
/// <param name="Group">Position group; null for all. That of a group goes before that for all.</param>
/// <param name="MetricId">Identifier of the metric, as in docs/metrics.md.</param>
/// <param name="Value">The value to reach, in the metric's catalogue unit: not above it where lower is better, else not below it.</param>
public sealed record GroupTarget(string? Group, string MetricId, double Value)
{
    /// <summary>What the coach wrote beside it; empty for nothing. Untrusted text: always escape.</summary>
    public string Note { get; init; } = "";
}

/// <summary>The targets of a coach.</summary>
public sealed class GroupTargets
{
    private readonly Dictionary<(string? Group, string MetricId), double> _values = [];

    /// <summary>The targets of a coach.</summary>
    /// <param name="targets">Targets, one a group and metric.</param>
    /// <exception cref="ArgumentException">Two for the same group and metric, or a value that is not a finite number.</exception>
    public GroupTargets(IEnumerable<GroupTarget> targets)
    {
        ArgumentNullException.ThrowIfNull(targets);
        foreach (var target in targets)
        {
            var of = $"for {target.MetricId}, {(target.Group is null ? "all groups" : $"group '{target.Group}'")}";
            if (!double.IsFinite(target.Value)) throw new ArgumentException($"The target {of} is not a finite number.", nameof(targets));
            if (!_values.TryAdd((target.Group, target.MetricId), target.Value)) throw new ArgumentException($"There are two targets {of}. Keep one.", nameof(targets));
        }
    }

    /// <summary>No targets: everybody is held against the middle of his group.</summary>
    public static GroupTargets None { get; } = new([]);

    /// <summary>The target of a group in a metric; null when the coach has set none.</summary>
    /// <param name="group">Position group.</param>
    /// <param name="metricId">Identifier of the metric.</param>
    public double? Of(string group, string metricId)
        => _values.TryGetValue((group, metricId), out var own) ? own : _values.TryGetValue((null, metricId), out var all) ? all : null;
}
