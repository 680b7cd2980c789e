using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Statistics;
using Analytics.Statistics.Change;
using Analytics.Statistics.MixedModels;

namespace Analytics.Metrics.Seasons;

/// <summary>Turns the means of the models into courses in the metric's unit with verdicts.</summary>
internal sealed class TrendCourses(
    SquadProfile profile, Metric metric, SeasonPeriods periods, TrendRows rows, SquadTrend? trend, SmallestWorthwhileChange worthwhile, bool proportional)
{
    private readonly ILookup<string, TrendMean> _means = (trend is null ? [] : trend.Squad.Concat(trend.Groups)).ToLookup(m => m.Group ?? "");

    private readonly Dictionary<double, SeasonPeriod> _byDay = periods.All.ToDictionary(p => p.Day);

    public TrendCourse Of(string? group)
    {
        var athletes = rows.All.Where(r => group is null || r.Group == group).Select(r => r.Athlete).Distinct().Count();
        List<TrendMean> means = [.. _means[group ?? ""]];
        if (means.Count == 0)
        {
            var why = periods.All.Count < 2 ? "one occasion only: nothing to compare it with" : "no model could be fitted";
            return new(group, [], Verdict.CannotTellYet, why, athletes);
        }

        var first = means[0];
        List<TrendPoint> points = [.. means.Select(m => Point(group, first, m))];
        var (verdict, reason) = Judge(points);
        return new(group, points, verdict, reason, athletes);
    }

    private (Verdict Verdict, string? Reason) Judge(List<TrendPoint> points)
    {
        if (points.Count < 2) return (Verdict.CannotTellYet, "tested on one occasion only");
        // Values that repeat exactly would give an interval without width; that is no evidence of precision.
        return points[^1].SinceFirst is { Change: { StandardError: > 0 } change }
            ? (profile.Rule.Judge(change, worthwhile.Value, metric.Better == Direction.Lower), null)
            : (Verdict.CannotTellYet, "the values repeat exactly, so nothing tells how far they may be off");
    }

    private TrendPoint Point(string? group, TrendMean first, TrendMean mean)
    {
        var (from, to) = (_byDay[first.Day], _byDay[mean.Day]);
        var shared = rows.SharedError(group, to.Number);
        var level = Level(mean);
        var known = Known(mean.Own.Mean.StandardError * level.PerUnit, mean.Own.Mean.DegreesOfFreedom, Math.Abs(shared) * level.PerUnit, level.Mean);
        var estimate = new Estimate(level.Mean, known.StandardError, known.Interval(profile.Rule.Level), mean.Own.Mean.Groups, "mixed model, mean true level of these athletes");
        return new(to, mean.Athletes, estimate, mean.SinceFirst is null ? null : Difference(first, mean, Math.Abs(shared - rows.SharedError(group, from.Number))));
    }

    private TrendDifference Difference(TrendMean first, TrendMean mean, double shared)
    {
        var (before, after) = (Level(first), Level(mean));
        var (own, alike) = (mean.Own.SinceFirst!, mean.SinceFirst!);
        var difference = after.Mean - before.Mean;
        var change = Known(own.StandardError * after.Root, own.DegreesOfFreedom, shared * after.PerUnit, difference);
        var others = Known(alike.StandardError * after.Root, alike.DegreesOfFreedom, shared * after.PerUnit, difference);
        return new(change, change.Interval(profile.Rule.Level), others.Interval(profile.Rule.Level), 100 * difference / before.Mean);
    }

    private static IndividualChange Known(double error, double degrees, double shared, double value)
    {
        var own = new IndividualChange(value, error, degrees);
        return error > 0 && shared > 0 ? own.WithKnownError(shared) : own;
    }

    /// <summary>Mean level in the metric's unit, and how many units one unit of the model's scale is there: of the mean, and of athletes who err by shares of their own level.</summary>
    private (double Mean, double PerUnit, double Root) Level(TrendMean mean)
    {
        if (!proportional) return (mean.Own.Mean.Value, 1, 1);
        double[] levels = [.. mean.Own.Levels.Select(Math.Exp)];
        return (levels.Average(), levels.Average(), Math.Sqrt(levels.Average(l => l * l)));
    }
}
