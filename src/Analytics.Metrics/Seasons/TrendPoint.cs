using Analytics.Statistics;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Seasons;

/// <summary>Where a squad or a group stood in a period.</summary>
/// <param name="Period">The period.</param>
/// <param name="Athletes">Athletes with a value in it; the mean is that of everybody in the course, see <see cref="TrendCourse"/>.</param>
/// <param name="Mean">Mean true level of these athletes, in the metric's unit, with its interval.</param>
/// <param name="SinceFirst">Change since the first period of the course; null in it.</param>
public sealed record TrendPoint(SeasonPeriod Period, int Athletes, Estimate Mean, TrendDifference? SinceFirst);

/// <summary>A mean change between two periods.</summary>
/// <param name="Change">Mean true change of these athletes, in the metric's unit, with its error.</param>
/// <param name="Interval">Its interval at the rule's level: how far test error, and athletes who missed a day, may have moved it.</param>
/// <param name="OthersLikeThem">
/// The wider interval of the mean change of the population these athletes stand for: what the same months would do with others like them. How
/// differently these responded is an error there.
/// </param>
/// <param name="Percent">The change in per cent of the level of the first period.</param>
public sealed record TrendDifference(IndividualChange Change, Interval Interval, Interval OthersLikeThem, double Percent);
