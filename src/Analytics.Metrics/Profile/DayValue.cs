using Analytics.Metrics.Catalogue;

namespace Analytics.Metrics.Profile;

/// <summary>One athlete's value of a metric on one day.</summary>
/// <param name="AthleteId">Identifier of the athlete.</param>
/// <param name="Date">The day.</param>
/// <param name="Value">Best or mean of the attempts, as the metric's rule says; in the metric's unit.</param>
/// <param name="Attempts">The attempts on this scale, in file order.</param>
/// <param name="StandardError">Error of the value known from the attempts' own fits; null when they know none. Day-to-day variation is not in it.</param>
/// <param name="Doubts">Remarks that travel with the value; empty when there are none.</param>
public sealed record DayValue(
    string AthleteId, DateOnly Date, double Value, IReadOnlyList<TrialValue> Attempts, double? StandardError, IReadOnlyList<string> Doubts);

/// <summary>A value that was read but takes no part in a comparison.</summary>
/// <param name="AthleteId">Identifier of the athlete.</param>
/// <param name="Date">The day.</param>
/// <param name="Value">In the metric's unit.</param>
/// <param name="Series">The scale it was measured on.</param>
/// <param name="Reason">Why it is not compared, in plain words.</param>
public sealed record NotCompared(string AthleteId, DateOnly Date, double Value, string Series, string Reason);
