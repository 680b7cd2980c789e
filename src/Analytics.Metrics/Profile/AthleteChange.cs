using Analytics.Statistics;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Profile;

/// <summary>One athlete's change in one metric.</summary>
/// <param name="AthleteId">Identifier of the athlete.</param>
/// <param name="Before">Value on the earlier day.</param>
/// <param name="After">Value on the later day.</param>
/// <param name="Change">The difference with its error; null when no error is known.</param>
/// <param name="Interval">Interval of the true change at the rule's level; null when no error is known. With same-day errors it is too narrow.</param>
/// <param name="Verdict">The verdict.</param>
/// <param name="Reason">Why there can be no verdict, in plain words; null when the rule was applied.</param>
public sealed record AthleteChange(
    string AthleteId, DayValue Before, DayValue After, IndividualChange? Change, Interval? Interval, Verdict Verdict, string? Reason)
{
    /// <summary>
    /// How the two values were made and what that adds to the error ("the earlier day measured, the later estimated from 5 repetitions:
    /// the equation's error is added"); null when no equation stands behind either.
    /// </summary>
    public string? Remark { get; init; }

    /// <summary>Standard error of the equation's error in the difference that is common to all athletes, with its sign; it does not average out over a squad.</summary>
    internal double SharedError { get; init; }

    /// <summary>After minus before, in the metric's unit.</summary>
    public double Difference => After.Value - Before.Value;

    /// <summary>Remarks on either value.</summary>
    public IReadOnlyList<string> Doubts => [.. Before.Doubts.Concat(After.Doubts).Distinct()];
}
