using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Planning.Plans;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The week at a glance: a row a group, a column a day, the main exercises in order.</summary>
internal static class GlanceBlock
{
    public static Block Of(WeekContext week)
    {
        if (week.Answer.Plan is null) return new Together();
        var slots = week.Choice.Sessions.GroupBy(s => s.Date).ToList();
        var groups = week.Sessions.Where(s => !s.IsApart).Select(s => s.Group).Distinct().ToList();
        var table = DataTable.Of("Exercises of the shared part, in order", groups, t =>
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
        return new(string.Join(", ", sessions.SelectMany(s => s.Shared).Select(i => $"{i.Exercise.Name} {SheetWords.Sets(i)}")), string.Join("; ", sessions.Select(Own)));
    }

    private static string Own(UnitSession session) => string.Create(CultureInfo.InvariantCulture,
        $"{session.Minutes:0} min{(session.Own.Count > 0 ? $", own work: {string.Join(", ", session.Own.Select(o => o.Item.Exercise.Name))}" : "")}");

    private static string Games(WeekContext week)
    {
        var games = week.Choice.Games.Where(g => g.Date >= week.Choice.Monday).Select(g => SheetWords.ShortDay(g.Date)).ToList();
        return games.Count == 0 ? "No game is listed in this week or the next." : $"Games: {string.Join(", ", games)}.";
    }
}
