using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The week at a glance: a row a group, a column a day, the main exercises in order.</summary>
internal static class GlanceBlock
{
    private const int Main = 3;

    public static Block Of(WeekContext week)
    {
        if (week.Answer.Plan is null) return new Together();
        var slots = week.Choice.Sessions.GroupBy(s => s.Date).ToList();
        var groups = week.Sessions.Where(s => !s.IsApart).Select(s => s.Group).Distinct().ToList();
        var table = DataTable.Of("Main exercises of the shared part, in order; the sheets have all", groups, t =>
        {
            t.Text("Group", g => new Cell(g, string.Create(CultureInfo.InvariantCulture, $"{week.Squad.Players.Count(p => p.Group == g)} players")));
            foreach (var day in slots)
                t.Text($"{SheetWords.ShortDay(day.Key)}: {string.Join(", ", day.Select(s => week.Training.Kinds.First(k => k.Id == s.Kind).Name).Distinct())}", g => Day(week, g, day.Key));
        });
        return new Section("The week at a glance", week.Choice.FromCalendar ? "" : "The calendar has no session in this week; this is the usual week of the phase.", table, new Note(Games(week)));
    }

    private static Cell Day(WeekContext week, string group, DateOnly date)
    {
        var sessions = week.Sessions.Where(s => s.Group == group && !s.IsApart && s.Slot.Date == date).ToList();
        if (sessions.Count == 0) return Cell.Missing;
        var all = sessions.SelectMany(s => s.Shared).ToList();
        // What takes most of the time is what the day is about.
        var main = all.OrderByDescending(i => i.Time.Seconds).Take(Main).ToHashSet();
        var more = all.Count - main.Count;
        return new(string.Join(", ", all.Where(main.Contains).Select(i => $"{i.Exercise.Name} {SheetWords.Sets(i)}")) + (more > 0 ? string.Create(CultureInfo.InvariantCulture, $", {more} more") : ""),
            string.Join("; ", sessions.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Minutes:0} min"))));
    }

    private static string Games(WeekContext week)
    {
        var games = week.Choice.Games.Where(g => g.Date >= week.Choice.Monday).Select(g => SheetWords.ShortDay(g.Date)).ToList();
        return games.Count == 0 ? "No game is listed in this week or the next." : $"Games: {string.Join(", ", games)}.";
    }
}
