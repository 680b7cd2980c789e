using Analytics.Planning.Weeks;
using Analytics.Season.Cells;

namespace Analytics.Season.Training;

/// <summary>Checks across the rows of a calendar: games first, since no session goes with a game on its day.</summary>
internal static class CalendarChecks
{
    private const string All = "all groups";

    /// <summary>Counts the rows that stay as kept and holds the others back.</summary>
    public static (IReadOnlyList<SessionSlot> Sessions, IReadOnlyList<Game> Games) Keep(IReadOnlyList<CalendarRow> rows)
    {
        var games = new Dictionary<DateOnly, CalendarRow>();
        foreach (var row in rows.Where(r => r.Game is not null))
        {
            if (games.TryGetValue(row.Game!.Date, out var first))
                row.Place.HoldBack("date", row.Written, $"a game of {DateText.Iso(row.Game.Date)} already stands in {first.Place.SeenFrom(row.Place)}; nobody plays two on a day", "Correct the date, or delete one of the two rows.");
            else
                games.Add(row.Game.Date, row);
        }

        var sessions = new List<CalendarRow>();
        foreach (var row in rows.Where(r => r.Session is not null))
        {
            if (games.TryGetValue(row.Session!.Date, out var game))
                row.Place.HoldBack("date", row.Written, $"there is a game on {DateText.Iso(row.Session.Date)} ({game.Place.SeenFrom(row.Place)}), and no training session is planned on the day of a game", "Move the session or the game to another day.");
            else if (sessions.Select(s => Clash(row, s)).FirstOrDefault(c => c is not null) is { } clash)
                row.Place.HoldBack("start", row.Session.Start is { } start ? start.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture) : "", clash.Reason, clash.Remedy);
            else
                sessions.Add(row);
        }

        foreach (var row in sessions.Concat(games.Values)) row.Place.Tally.CountKept();
        return ([.. sessions.Select(s => s.Session!).OrderBy(s => s.Date).ThenBy(s => s.Start)], [.. games.Values.Select(g => g.Game!).OrderBy(g => g.Date)]);
    }

    private static (string Reason, string Remedy)? Clash(CalendarRow row, CalendarRow earlier)
    {
        SessionSlot one = row.Session!, other = earlier.Session!;
        if (Shared(one, other) is not { } who) return null;
        var where = earlier.Place.SeenFrom(row.Place);
        if (one.Start is not { } start || other.Start is not { } before)
            return one.Date != other.Date ? null
                : ($"{who} already {(who == All ? "have" : "has")} a session on {DateText.Iso(one.Date)} in {where}, and without both starts it cannot be told whether they are at the same time", "Fill in start in both rows, or delete one of them.");
        // With their dates: a session may end after midnight.
        DateTime from = one.Date.ToDateTime(start), then = other.Date.ToDateTime(before);
        return from < then.AddMinutes(other.Minutes) && then < from.AddMinutes(one.Minutes)
            ? ($"{who} would be in two sessions at the same time: the one in {where} is from {(one.Date == other.Date ? "" : DateText.Iso(other.Date) + " ")}{before:HH\\:mm} for {other.Minutes} minutes", "Correct the start or the minutes, or name the groups of each session.")
            : null;
    }

    /// <summary>Who is in both; null when nobody is.</summary>
    private static string? Shared(SessionSlot one, SessionSlot other)
    {
        if (one.Groups.Count is 0 && other.Groups.Count is 0) return All;
        var both = one.Groups.Count is 0 ? other.Groups : other.Groups.Count is 0 ? one.Groups : [.. one.Groups.Intersect(other.Groups)];
        return both.Count is 0 ? null : $"the group {CellText.Show(both[0])}";
    }
}
