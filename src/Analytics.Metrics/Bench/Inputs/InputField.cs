using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Bench.Inputs;

/// <summary>One thing a formula may take in: how well it is known, and how a day looks when it comes out otherwise.</summary>
/// <param name="Name">In trade words, for example <c>time at 10 yd</c>.</param>
/// <param name="Measure">The day's value of it as a metric, whose typical error between days is taken.</param>
/// <param name="Times">The day with this input of all its trials times a factor near 1; the day itself where it has none.</param>
internal sealed record InputField(string Name, Metric Measure, Func<AthleteDay, double, AthleteDay> Times);
