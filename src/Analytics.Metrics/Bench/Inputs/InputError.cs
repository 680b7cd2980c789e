using Analytics.Statistics;

namespace Analytics.Metrics.Bench.Inputs;

/// <summary>One input a formula uses, with its error and what that does to the metric.</summary>
/// <param name="Name">The input in trade words.</param>
/// <param name="Percent">Its typical error between days as a share of its value, in percent.</param>
/// <param name="PercentInterval">Its interval; without width where it is not known how well it is known.</param>
/// <param name="IsOwn">Whether that comes from the squad's own retest.</param>
/// <param name="Basis">Where it comes from, in words a report can print.</param>
/// <param name="Share">Its part of the error of the metric, 0 to 1, when inputs err by themselves.</param>
public sealed record InputError(string Name, double Percent, Interval PercentInterval, bool IsOwn, string Basis, double Share);
