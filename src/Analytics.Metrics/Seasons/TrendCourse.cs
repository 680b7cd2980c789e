using Analytics.Statistics.Change;

namespace Analytics.Metrics.Seasons;

/// <summary>The course of the squad or of a position group: all athletes with a value on the scale compared, in whichever period.</summary>
/// <param name="Group">The group; null for the squad.</param>
/// <param name="Points">One a period in which anybody of it was tested, in order of time.</param>
/// <param name="Verdict">The profile's rule applied to the change from the first point to the last.</param>
/// <param name="Reason">Why there is no verdict, in plain words; null when the rule was applied.</param>
/// <param name="Athletes">Athletes in it.</param>
public sealed record TrendCourse(string? Group, IReadOnlyList<TrendPoint> Points, Verdict Verdict, string? Reason, int Athletes)
{
    /// <summary>Change from the first point to the last; null with fewer than two.</summary>
    public TrendDifference? OverSeason => Points.Count > 1 ? Points[^1].SinceFirst : null;
}

/// <summary>The values of one athlete, for the line behind the means.</summary>
/// <param name="AthleteId">Identifier of the athlete.</param>
/// <param name="Group">Position group.</param>
/// <param name="Values">Values by date.</param>
public sealed record AthleteCourse(string AthleteId, string Group, IReadOnlyList<Profile.DayValue> Values);
