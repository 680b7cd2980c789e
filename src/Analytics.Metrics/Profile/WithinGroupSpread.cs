using Analytics.Statistics.Change;
using Analytics.Statistics.Summaries;

namespace Analytics.Metrics.Profile;

/// <summary>Spread between athletes of the same group, pooled over groups: a small group cannot state its own.</summary>
/// <param name="StandardDeviation">Observed, test error included, in the metric's unit.</param>
/// <param name="ErrorVariance">Mean squared error at the athletes' values: the typical error, and what an equation gets wrong about each athlete; null when no error is known.</param>
/// <param name="Athletes">Athletes behind it.</param>
/// <param name="Groups">Groups with two or more athletes.</param>
/// <param name="DegreesOfFreedom">Athletes less groups.</param>
public sealed record WithinGroupSpread(double StandardDeviation, double? ErrorVariance, int Athletes, int Groups, int DegreesOfFreedom)
{
    /// <summary>Fewest degrees of freedom for a spread worth stating.</summary>
    internal const int Fewest = 5;

    /// <summary>Variance between athletes freed of test error; negative when they differ no more than error explains; null without an error.</summary>
    public double? TrueVariance => StandardDeviation * StandardDeviation - ErrorVariance;

    /// <summary>Pools the spread; null when there are too few athletes.</summary>
    internal static WithinGroupSpread? Of(SquadProfile profile, MetricDay day, MetricReliability reliability) => Of(profile, day.Values, reliability);

    /// <summary>Pools the spread of one value an athlete; null when there are too few athletes.</summary>
    internal static WithinGroupSpread? Of(SquadProfile profile, IReadOnlyList<DayValue> values, MetricReliability reliability)
    {
        var groups = values.Where(v => profile.GroupOf(v.AthleteId) is not null)
            .GroupBy(v => profile.GroupOf(v.AthleteId)!).Select(g => g.ToArray()).Where(g => g.Length > 1).ToList();
        var df = groups.Sum(g => g.Length - 1);
        if (df < Fewest) return null;
        var variance = groups.Sum(g => (g.Length - 1) * Moments.Variance([.. g.Select(v => v.Value)])) / df;
        double? error = reliability.Error is null ? null : groups.SelectMany(g => g).Average(v => ErrorVarianceOf(v, reliability));
        return new(Math.Sqrt(variance), error, groups.Sum(g => g.Length), groups.Count, df);
    }

    // What an equation gets wrong about everybody alike does not drive athletes apart, so it is not taken off.
    private static double ErrorVarianceOf(DayValue value, MetricReliability reliability)
        => Math.Pow(reliability.ErrorAt(value.Value)!.Value, 2) + (value.Equation is { } e
            ? e.Personal * e.Personal + (reliability.HoldsFreshEquationError ? 0 : e.Fresh * e.Fresh)
            : 0);

    /// <summary>The smallest worthwhile change: the coach's own figure, else a share of this spread.</summary>
    internal static SmallestWorthwhileChange Worthwhile(SquadProfile profile, MetricDay day, WithinGroupSpread? spread)
        => Worthwhile(profile, day.Metric.Id, spread, spread is null ? default : day.Values.Max(v => v.Date));

    /// <summary>The same for values of several days, the last of them given for the text.</summary>
    internal static SmallestWorthwhileChange Worthwhile(SquadProfile profile, string metricId, WithinGroupSpread? spread, DateOnly last)
    {
        if (profile.Worthwhile.TryGetValue(metricId, out var set)) return SmallestWorthwhileChange.Anchored(set, "set by the coach");
        if (spread is null) return new(null, $"none: fewer than {Fewest} athletes to compare within groups");
        var among = FormattableString.Invariant(
            $"athletes of the same group ({spread.Athletes} in {spread.Groups} groups, {last:d MMMM yyyy})");
        return spread.ErrorVariance is { } error
            ? SmallestWorthwhileChange.OfTrueSpread(spread.StandardDeviation, Math.Sqrt(error), 1, profile.WorthwhileShare, among)
            : SmallestWorthwhileChange.OfObservedSpread(spread.StandardDeviation, profile.WorthwhileShare, among);
    }
}
