using System.Globalization;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning;
using Analytics.Planning.Weeks;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Which week, and its sessions.</summary>
/// <param name="Monday">First day.</param>
/// <param name="Sessions">Sessions.</param>
/// <param name="From">Where the sessions come from, in words.</param>
/// <param name="IsUsualWeek">Whether they are those of the usual week because the calendar has none.</param>
internal sealed record WeekChoice(DateOnly Monday, IReadOnlyList<SessionSlot> Sessions, string From, bool IsUsualWeek)
{
    /// <summary>The week after the latest testing day.</summary>
    public const string Next = "next";

    /// <summary>The phase the games of the calendar tell.</summary>
    public const string Auto = "auto";

    // A game up to this many days off makes it in season, one up to these weeks off the time before it (our choice, no source).
    private const int NearDays = 7;
    private const int BeforeWeeks = 8;

    private static readonly (string Word, SeasonPhase Phase, string Text)[] s_phases =
        [("off_season", SeasonPhase.OffSeason, "off season"), ("pre_season", SeasonPhase.PreSeason, "pre-season"), ("in_season", SeasonPhase.InSeason, "in season")];

    /// <summary>Reads the settings.</summary>
    /// <exception cref="SeasonException">One of them cannot be used, or nothing tells of a session.</exception>
    public static WeekChoice Of(SeasonData season, string week, string phase)
    {
        if (phase != Auto && Array.TrueForAll(s_phases, p => p.Word != phase))
            throw new SeasonException($"phase is '{phase}'; use \"{Auto}\" or one of: {string.Join(", ", s_phases.Select(p => p.Word))}.");
        var monday = MondayOf(season, week);
        var training = season.Training;
        var listed = training.Sessions.Where(s => s.Date >= monday && s.Date < monday.AddDays(7)).ToList();
        if (listed.Count > 0) return new(monday, listed, "the calendar", false);

        var (word, meant, text) = phase == Auto ? s_phases.First(p => p.Phase == PhaseOf(training, monday)) : s_phases.First(p => p.Word == phase);
        var shape = training.Shapes.FirstOrDefault(s => s.Phase == meant)
            ?? throw new SeasonException($"The calendar has no session from {Words.Date(monday)} to {Words.Date(monday.AddDays(6))}, and there is no usual week of {word}. Add sessions to training/calendar.csv, or days to training/week-shapes.csv.");
        var room = RoomOf(training, monday);
        var sessions = shape.Sessions(monday, [.. training.Games.Where(g => g.Date >= monday && g.Date < monday.AddDays(14))], room);
        if (sessions.Count == 0)
            throw new SeasonException($"The week from {Words.Date(monday)} has no session: the calendar has none, and the usual week of {word} puts none into it (its days count back from a game). Add sessions or games to training/calendar.csv, or choose another phase.");
        return new(monday, sessions, $"the usual week, {text} ({shape.Source}), since the calendar has no session in this week; room: {(room.Length > 0 ? room : "none")}", true);
    }

    private static DateOnly MondayOf(SeasonData season, string week)
    {
        if (week != Next)
            return DateOnly.TryParseExact(week, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? MondayIn(day)
                : throw new SeasonException($"week is '{week}'; use \"{Next}\" or any day of the week as yyyy-mm-dd.");
        var tested = season.Days.Where(d => d.Athletes.Any(a => a.Trials.Count > 0)).Select(d => (DateOnly?)d.Date).Max();
        var sessions = season.Training.Sessions;
        if (tested is null && sessions.Count == 0)
            throw new SeasonException("There is neither a testing day nor a session in the calendar, so it is not known which week is next. Set week to a day as yyyy-mm-dd.");
        var after = tested is { } latest ? MondayIn(latest).AddDays(7) : MondayIn(sessions.Min(s => s.Date));
        return sessions.Where(s => s.Date >= after).Select(s => (DateOnly?)MondayIn(s.Date)).Min() ?? after;
    }

    private static DateOnly MondayIn(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + 6) % 7));

    private static SeasonPhase PhaseOf(TrainingSettings training, DateOnly monday)
        => training.Games.Any(g => g.Date >= monday.AddDays(-NearDays) && g.Date < monday.AddDays(7 + NearDays)) ? SeasonPhase.InSeason
            : training.Games.Any(g => g.Date >= monday && g.Date < monday.AddDays(7 * BeforeWeeks)) ? SeasonPhase.PreSeason : SeasonPhase.OffSeason;

    // The room used last, else the one used next, else the first of the list.
    private static string RoomOf(TrainingSettings training, DateOnly monday)
        => training.Sessions.Where(s => s.Room.Length > 0).OrderBy(s => s.Date < monday ? 0 : 1).ThenBy(s => Math.Abs(s.Date.DayNumber - monday.DayNumber)).FirstOrDefault()?.Room
            ?? (training.Rooms.Count > 0 ? training.Rooms[0].Id : "");
}
