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
    string AthleteId, DateOnly Date, double Value, IReadOnlyList<TrialValue> Attempts, double? StandardError, IReadOnlyList<string> Doubts)
{
    /// <summary>The part of <see cref="StandardError"/> that no retest shows, since it is the equation's; null when the value was measured or comes from a fit.</summary>
    public EquationError? Equation { get; init; }

    /// <summary>"measured", "estimated from 5 repetitions", where values of the metric come about differently; else empty.</summary>
    public string HowMade { get; init; } = "";

    /// <summary>Degrees of freedom of <see cref="StandardError"/>; null when it is taken as known or there is none.</summary>
    public int? ErrorDegreesOfFreedom { get; init; }

    /// <summary>
    /// Where the athlete's usual level lies: value ± t √(TE² + equation²). With no between-day error known the fit's own error or
    /// that of same-day attempts stands in for TE, and the result says so. Null when nothing is known.
    /// </summary>
    /// <param name="reliability">What is known of the metric's error on this scale.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public DayValueInterval? Interval(MetricReliability reliability, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(reliability);
        return DayValueInterval.Of(this, reliability, level);
    }
}

/// <summary>A value that was read but takes no part in a comparison.</summary>
/// <param name="AthleteId">Identifier of the athlete.</param>
/// <param name="Date">The day.</param>
/// <param name="Value">In the metric's unit.</param>
/// <param name="Series">The scale it was measured on.</param>
/// <param name="Reason">Why it is not compared, in plain words.</param>
public sealed record NotCompared(string AthleteId, DateOnly Date, double Value, string Series, string Reason);
