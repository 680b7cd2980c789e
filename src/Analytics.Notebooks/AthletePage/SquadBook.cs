using System.Runtime.CompilerServices;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.AthletePage;

/// <summary>What all pages of a season share: standings, changes and needs of the squad, each worked out once and kept as long as the season is.</summary>
internal sealed class SquadBook
{
    /// <summary>
    /// Fewest players behind a group figure (our choice, no source). The page shows a player his own value and the mean: of two players that gives
    /// the other away; with five at least four values stay open.
    /// </summary>
    public const int FewestCompared = 5;

    private static readonly ConditionalWeakTable<SeasonData, SquadBook> s_books = [];

    private readonly SeasonData _season;
    private readonly Lock _gate = new();
    private readonly Dictionary<DateOnly, DayContext> _days = [];
    private readonly Dictionary<(string Metric, DateOnly From, DateOnly To), SquadChange> _changes = [];
    private readonly Dictionary<DateOnly, Dictionary<string, Metrics.Trials.AthleteDay>> _players = [];

    private SquadBook(SeasonData season)
    {
        _season = season;
        foreach (var day in season.Days) _players[day.Date] = day.Athletes.ToDictionary(a => a.AthleteId, StringComparer.Ordinal);
    }

    /// <summary>The book of a season; pages of one season may be made side by side.</summary>
    public static T Ask<T>(SeasonData season, Func<SquadBook, T> question)
    {
        var book = s_books.GetValue(season, s => new SquadBook(s));
        lock (book._gate) return question(book);
    }

    /// <summary>The squad on a day.</summary>
    public DayContext On(DateOnly day)
        => _days.TryGetValue(day, out var known) ? known : _days[day] = new DayContext(_season, new DayChoice(Day(day), null), FewestCompared);

    /// <summary>What one player did on a day; null when nothing.</summary>
    public Metrics.Trials.AthleteDay? Of(string athlete, DateOnly day) => _players[day].GetValueOrDefault(athlete);

    public SquadChange Change(Metric metric, DateOnly from, DateOnly to)
        => _changes.TryGetValue((metric.Id, from, to), out var known) ? known
            : _changes[(metric.Id, from, to)] = On(to).Profile.Change(metric, Day(from).Athletes, Day(to).Athletes);

    private Season.TestingDay Day(DateOnly date) => _season.Days.First(d => d.Date == date);
}
