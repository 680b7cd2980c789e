using System.Globalization;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning;
using Analytics.Planning.Weeks;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Which week, and where its sessions come from.</summary>
/// <param name="Monday">First day.</param>
/// <param name="Sessions">Sessions, by date and start.</param>
/// <param name="Games">Games of the week and of the days around it.</param>
/// <param name="FromCalendar">Whether the calendar has the sessions; else they are the usual week of the phase.</param>
/// <param name="Phase">Phase whose usual week was taken; null with a calendar.</param>
internal sealed record WeekChoice(DateOnly Monday, IReadOnlyList<SessionSlot> Sessions, IReadOnlyList<Game> Games, bool FromCalendar, SeasonPhase? Phase)
{
    /// <summary>Words of the phases, as a setting takes them.</summary>
    public static IReadOnlyDictionary<string, SeasonPhase> Phases { get; } = new Dictionary<string, SeasonPhase>(StringComparer.Ordinal)
    {
        ["off_season"] = SeasonPhase.OffSeason, ["pre_season"] = SeasonPhase.PreSeason, ["in_season"] = SeasonPhase.InSeason,
    };

    /// <summary>The week a setting asks for.</summary>
    /// <param name="season">The season.</param>
    /// <param name="training">Its training files.</param>
    /// <param name="week"><c>next</c>, or any day of the week as <c>yyyy-mm-dd</c>.</param>
    /// <param name="phase"><c>auto</c>, or a phase.</param>
    /// <exception cref="SeasonException">A setting that means nothing; the message says what it takes.</exception>
    public static WeekChoice Of(SeasonData season, TrainingSettings training, string week, string phase)
    {
        if (phase != "auto" && !Phases.ContainsKey(phase))
            throw new SeasonException($"phase is '{Short(phase)}'; use \"auto\", {string.Join(", ", Phases.Keys.Select(k => $"\"{k}\""))}.");
        var monday = week == "next" ? Next(season, training) : MondayOf(DateOnly.TryParseExact(week, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day : throw new SeasonException($"week is '{Short(week)}'; use \"next\", or a day of the week as yyyy-mm-dd, such as 2026-06-15."));
        if (monday.AddDays(6) < season.Settings.From || monday > season.Settings.To)
            throw new SeasonException($"The week of {DaySetting.Iso(monday)} is outside the season, {DaySetting.Iso(season.Settings.From)} to {DaySetting.Iso(season.Settings.To)}. Name a week inside it, or correct \"from\" and \"to\" in season.json.");
        bool Within(DateOnly date) => date >= monday && date <= monday.AddDays(6);
        var games = training.Games.Where(g => g.Date >= monday.AddDays(-3) && g.Date <= monday.AddDays(13)).ToList();
        var sessions = training.Sessions.Where(s => Within(s.Date)).OrderBy(s => s.Date).ThenBy(s => s.Start ?? TimeOnly.MinValue).ToList();
        if (phase == "auto" && sessions.Count > 0) return new(monday, sessions, games, true, null);

        var chosen = phase != "auto" ? Phases[phase] : games.Any(g => Within(g.Date)) ? SeasonPhase.InSeason : games.Count > 0 ? SeasonPhase.PreSeason : SeasonPhase.OffSeason;
        var room = training.Rooms.Count > 0 ? training.Rooms[0].Id : "";
        var shape = training.Shapes.FirstOrDefault(s => s.Phase == chosen);
        return new(monday, shape?.Sessions(monday, games, room) ?? [], games, false, chosen);
    }

    // The first week of the calendar after the last testing day, else the week after it.
    private static DateOnly Next(SeasonData season, TrainingSettings training)
    {
        var last = season.Days.Count > 0 ? season.Days[^1].Date : season.Settings.From;
        var after = training.Sessions.Select(s => s.Date).Where(d => d > last).Order().ToList();
        return MondayOf(after.Count > 0 ? after[0] : MondayOf(last).AddDays(7));
    }

    public static DateOnly MondayOf(DateOnly date) => date.AddDays(-(((int)date.DayOfWeek + 6) % 7));

    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "\u2026";
}
