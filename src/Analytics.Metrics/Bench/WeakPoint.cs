namespace Analytics.Metrics.Bench;

/// <summary>A weak point of a sketched metric.</summary>
/// <param name="Weight">How much it counts against the others, 0 to 1; a rule of ours, no source.</param>
/// <param name="What">The point in a few words.</param>
/// <param name="Text">What was seen and what would mend it, in one or two plain sentences; figures need no unit.</param>
public sealed record WeakPoint(double Weight, string What, string Text);
