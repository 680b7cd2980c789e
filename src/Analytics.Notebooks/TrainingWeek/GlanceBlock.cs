using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Plans;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The week at a glance: groups by days.</summary>
internal static class GlanceBlock
{
    private const string Title = "The week at a glance";

    public static ReportBlock Of(WeekView view)
    {
        if (view.Sessions.Count == 0) return view.Plan is null && view.Only is null ? Asked(view) : new Together();
        var days = view.Sessions.Select(s => s.Slot.Date).Distinct().Order().ToList();
        var groups = view.Sessions.Where(s => view.Only is not null || !s.IsApart).GroupBy(s => s.Group).ToList();
        List<Column> columns = [new("Group"), .. days.Select(d => new Column(WeekWords.ShortDay(d)))];
        var rows = groups.Select(g => (IReadOnlyList<Cell>)[new Cell(g.Key, Who(view, g.Key)), .. days.Select(d => Of([.. g.Where(s => s.Slot.Date == d)], view))]);
        return new Framed("gl", new Section(Title, $"Sessions from {(view.Week.Choice.IsUsualWeek ? "the usual week" : view.Week.Choice.From)}. Exercises in the order they are done; own work is on the sheets.",
            new DataTable("Groups and days", columns, rows)));
    }

    private static string Who(WeekView view, string group)
        => view.Only is not null ? "" : Words.Players(view.Week.Squad.Players.Count(p => p.Group == group));

    private static Cell Of(IReadOnlyList<UnitSession> sessions, WeekView view)
        => sessions.Count == 0 ? Cell.Missing : new(
            string.Join("; ", sessions.Select(s => $"{WeekWords.Kind(s.Kind)}{(s.Slot.Start is { } start ? Invariant($", {start:HH\\:mm}") : "")}")),
            string.Join("; ", sessions.SelectMany(s => view.Only is { } only ? s.For(only.Id) : s.Shared).Select(i => $"{i.Exercise.Name} {WeekWords.Sets(i)}")));

    // Without a plan at least what was asked for.
    private static Section Asked(WeekView view) => new Section("The sessions asked for", "", DataTable.Of("Sessions", view.Week.Choice.Sessions, t => t
        .Text("Day", s => WeekWords.Session(s))
        .Text("Kind", s => view.Week.Problem.Kinds.First(k => k.Id == s.Kind).Name)
        .Number("Minutes", "", 0, s => s.Minutes)
        .Text("Room", s => s.Room)
        .Text("Groups", s => s.Groups.Count == 0 ? "all" : Words.List(s.Groups))));
}
