using Analytics.Metrics.Profile;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Seasons;

/// <summary>The first value of everybody who was tested in the first period: the spread a season's changes are measured by.</summary>
internal static class FirstValues
{
    public static IReadOnlyList<DayValue> Of(SeasonValues values, SeasonPeriods periods)
        => [.. values.Athletes.Select(id => values.Of(id)[0]).Where(v => periods.NumberOf(v.Date) == 0)];

    public static WithinGroupSpread? Spread(SquadProfile profile, SeasonValues values, SeasonPeriods periods, MetricReliability reliability)
        => WithinGroupSpread.Of(profile, Of(values, periods), reliability);

    public static SmallestWorthwhileChange Worthwhile(SquadProfile profile, SeasonValues values, SeasonPeriods periods, MetricReliability reliability)
    {
        var spread = Spread(profile, values, periods, reliability);
        return WithinGroupSpread.Worthwhile(profile, values.Metric.Id, spread, spread is null ? default : periods.All[0].To);
    }
}
