using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Trials;
using Analytics.Season;

namespace Analytics.Notebooks.TestingDay;

/// <summary>What a report of a season's days starts from: the squad with its choices, and the metrics those days can be given in.</summary>
internal static class SquadSetup
{
    /// <summary>The athletes a report of these days is about. Who left before this season is in it by his results only.</summary>
    public static IReadOnlyList<Athlete> Squad(SeasonData season, IEnumerable<Season.TestingDay> days)
    {
        var seen = days.SelectMany(d => d.Athletes).Where(a => a.Trials.Count > 0).Select(a => a.AthleteId).ToHashSet(StringComparer.Ordinal);
        return [.. season.Athletes.Where(a => a.InLatestSeason || seen.Contains(a.Id))];
    }

    /// <summary>The squad with the retests and choices of the season.</summary>
    public static SquadProfile Profile(SeasonData season, IEnumerable<Athlete> squad) => new()
    {
        Squad = [.. squad.Select(a => new SquadMember(a.Id, a.Group))],
        Retests = [.. season.Settings.Retests.Select(r => Pair(season, r)).OfType<RepeatDays>()],
        WorthwhileShare = season.Settings.WorthwhileShare,
        Worthwhile = season.Settings.Worthwhile,
    };

    /// <summary>The metrics as the days shown are compared.</summary>
    /// <param name="timed">The days of one timing system: one set of gates times them, so their runs share one timing error.</param>
    /// <param name="shown">The days shown.</param>
    public static IReadOnlyList<Metric> Metrics(IEnumerable<Season.TestingDay> timed, IReadOnlyList<IReadOnlyList<AthleteDay>> shown)
    {
        var sprints = SprintMetrics.PooledOver(timed.SelectMany(d => d.Athletes)).ToDictionary(m => m.Id, StringComparer.Ordinal);
        return [.. SquadGates.Of([.. MetricCatalogue.All.Select(m => sprints.GetValueOrDefault(m.Id, m))], shown)];
    }

    /// <summary>The athletes' days a report of these days looks at: those of the season's retests tell the error.</summary>
    public static IEnumerable<AthleteDay> DaysLookedAt(SeasonData season, IEnumerable<Season.TestingDay> shown)
        => shown.Concat(season.Days.Where(d => season.Settings.Retests.Any(r => d.Date == r.First || d.Date == r.Second))).OrderBy(d => d.Date).SelectMany(d => d.Athletes).Distinct();

    private static RepeatDays? Pair(SeasonData season, RetestPair pair)
        => season.Days.FirstOrDefault(d => d.Date == pair.First) is { } first && season.Days.FirstOrDefault(d => d.Date == pair.Second) is { } second
            ? RepeatDays.Pair(first.Athletes, second.Athletes) : null;
}
