namespace Analytics.Metrics.Catalogue;

/// <summary>A metric that began as a sketch, with what it costs.</summary>
/// <param name="Metric">The metric.</param>
/// <param name="Test">The test it is worked out of, in trade words.</param>
/// <param name="Minutes">Minutes per athlete beyond that test, as its author estimates them; 0 for nothing more.</param>
public sealed record AddedMetric(Metric Metric, string Test, double Minutes = 0);
