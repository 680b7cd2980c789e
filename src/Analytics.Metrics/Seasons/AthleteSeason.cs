using Analytics.Metrics.Profile;
using Analytics.Statistics;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Seasons;

/// <summary>The mean of an athlete's values on one occasion.</summary>
/// <param name="Value">The mean as a value, with the equation's error and the doubts of all of them.</param>
/// <param name="Occasions">Values averaged.</param>
public sealed record OccasionMean(DayValue Value, int Occasions);

/// <summary>One athlete's change over the season in one metric.</summary>
/// <param name="AthleteId">Identifier of the athlete.</param>
/// <param name="Group">Position group.</param>
/// <param name="Baseline">His first occasion; the mean of both days when he did both of a retest.</param>
/// <param name="Last">His last occasion.</param>
/// <param name="Change">The difference with its error; null when no error is known.</param>
/// <param name="Interval">Interval of the true change at the rule's level; null when no error is known. With same-day errors it is too narrow.</param>
/// <param name="Verdict">The verdict.</param>
/// <param name="Reason">Why there can be no verdict, in plain words; null when the rule was applied.</param>
public sealed record AthleteSeason(
    string AthleteId, string Group, OccasionMean Baseline, OccasionMean Last, IndividualChange? Change, Interval? Interval, Verdict Verdict, string? Reason)
{
    /// <summary>What the equation behind the values adds, in words; null when none stands behind either.</summary>
    public string? Remark { get; init; }

    /// <summary>Whether his baseline lies in the squad's first period and his last value in its last.</summary>
    public required bool IsWholeSeason { get; init; }

    /// <summary>The part of the season he was tested in, in words; null when it is the whole.</summary>
    public string? Stretch { get; init; }

    /// <summary>Standard error of the equation's error in the difference that is common to all athletes, with its sign.</summary>
    internal double SharedError { get; init; }

    /// <summary>Whether an equation adds to the error of the difference.</summary>
    public bool HasEquationError { get; init; }

    /// <summary>Last minus baseline, in the metric's unit.</summary>
    public double Difference => Last.Value.Value - Baseline.Value.Value;

    /// <summary>Remarks on the values and on the stretch.</summary>
    public IReadOnlyList<string> Doubts => [.. Baseline.Value.Doubts.Concat(Last.Value.Doubts).Concat(Stretch is null ? [] : [Stretch]).Distinct()];
}

/// <summary>The change a test can tell from none, for athletes of whom as many values were averaged.</summary>
/// <param name="BaselineValues">Values averaged before.</param>
/// <param name="LastValues">Values averaged after.</param>
/// <param name="WithEquation">Whether an equation's error was added.</param>
/// <param name="Athletes">Athletes of this kind.</param>
/// <param name="Change">Mean over them of the smallest difference whose interval leaves out 0, in the metric's unit.</param>
public sealed record DetectableChange(int BaselineValues, int LastValues, bool WithEquation, int Athletes, double Change);
