using Analytics.Season;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Who was tested when, looked up once for the whole season.</summary>
internal sealed class Presence
{
    private readonly Dictionary<DateOnly, HashSet<string>> _tested;
    private readonly Dictionary<string, (DateOnly First, DateOnly Last)> _seen = new(StringComparer.Ordinal);
    private readonly DateOnly? _earlierTo;

    public Presence(SeasonData season)
    {
        _tested = season.Days.ToDictionary(d => d.Date, d => d.Athletes.Where(a => a.Trials.Count > 0).Select(a => a.AthleteId).ToHashSet(StringComparer.Ordinal));
        foreach (var (date, ids) in _tested.OrderBy(t => t.Key))
            foreach (var id in ids) _seen[id] = (_seen.TryGetValue(id, out var known) ? known.First : date, date);
        _earlierTo = season.Earlier.Count == 0 ? null : season.Earlier[^1].To;
    }

    public IReadOnlySet<string> On(Season.TestingDay day) => _tested[day.Date];

    /// <summary>
    /// Whether a player was in the squad on a day. Of joined seasons nobody wrote down who was when: a player belongs from his first test on, and one who left
    /// until his last; one without any test belongs to the latest season.
    /// </summary>
    public bool Belongs(Athlete athlete, DateOnly day)
        => _earlierTo is not { } earlierTo
            || (_seen.TryGetValue(athlete.Id, out var seen) ? day >= seen.First && (athlete.InLatestSeason || day <= seen.Last) : athlete.InLatestSeason && day > earlierTo);
}
