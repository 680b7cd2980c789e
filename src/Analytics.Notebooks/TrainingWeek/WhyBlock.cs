using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Each exercise with the quality and the needs it serves, and what was left out and why.</summary>
internal static class WhyBlock
{
    public static ReportBlock Of(WeekView view)
    {
        if (view.Plan is not { } plan) return NeedsOfWeek.Of(view);
        var groups = view.Sessions.GroupBy(s => s.IsApart && view.Only is null ? "Players apart" : s.Group).OrderBy(g => g.Key == "Players apart")
            .Select(g => (Block)new Folded($"{g.Key}: each exercise and what it serves", [Table(view, g.Key, [.. g])]) { ScreenOnly = true });
        // A reason for a group may hold a figure of one of its players.
        var left = plan.LeftOut.Where(l => view.Only is null || l.Group == $"{view.Only.Name} ({view.Only.Group})").ToList();
        Block[] leftOut = left.Count == 0 ? [] : [new Folded($"What was left out, and why: {left.Count} exercises", [DataTable.Of("What was left out, and why", left, t => t
            .Text("Exercise", l => l.What)
            .Text("For", l => l.Group)
            .Text("Why", l => Words.Capital(l.Reason)))]) { ScreenOnly = true }];
        return new Together(NeedsOfWeek.Of(view), new Section("Why these exercises",
            "What all do comes from the kind of the day and the needs of the group; own work from the needs of each player, else from the balanced default.", [.. groups, .. leftOut]));
    }

    private static DataTable Table(WeekView view, string group, IReadOnlyList<UnitSession> sessions)
    {
        var rows = sessions.SelectMany(s => SessionSheet.Lettered(s).Where(i => view.Only is null || i.Own is not { } o || o.ForNeed.Contains(view.Only.Id) || o.ByDefault.Contains(view.Only.Id)).Select(i => (Session: s, Item: i))).ToList();
        return DataTable.Of($"{group}: each exercise and what it serves", rows, t => t
            .Text("Exercise", r => new Cell(r.Item.Item.Exercise.Name, $"{WeekWords.Sets(r.Item.Item)}{(r.Session.IsApart && view.Only is null ? $", {view.Name(r.Session.Players[0])}" : "")}"))
            .Text("Day", r => WeekWords.ShortDay(r.Session.Slot.Date))
            .Text("Trains", r => r.Item.Item.Exercise.Quality.Name())
            .Text("Serves", r => Serves(view, r.Session, r.Item)));
    }

    private static Cell Serves(WeekView view, UnitSession session, SheetItem item)
    {
        if (view.Only is { } only)
            return item.Own is { } mine ? SessionSheet.Why(view.Week.Player(only.Id), mine) : item.Item.IsKept ? "fixed by the coach" : "what the kind of the day asks of all";
        if (item.Own is { } own)
            return new(own.ForNeed.Count == 0 ? "balanced default" : $"a need of {Words.Players(own.ForNeed.Count)}{(own.ByDefault.Count > 0 ? Invariant($"; balanced default of {own.ByDefault.Count} more") : "")}",
                own.ForNeed.Count == 0 ? "" : string.Join(", ", own.ForNeed.Select(id => $"{view.Name(id)} {Sure(view, id, own.Item.Exercise)}")));
        var with = session.Players.Where(id => view.Week.Player(id).Needs.Any(n => n.IsNeed && n.IsServedBy(item.Item.Exercise))).ToList();
        return new((item.Item.IsKept ? "fixed by the coach; " : "") + $"a {WeekWords.Kind(session.Kind)} day asks it of all", with.Count == 0 ? "" : $"a need of {Words.PlayersOf(with.Count, session.Players.Count)}: {string.Join(", ", with.Select(id => $"{view.Name(id)} {Sure(view, id, item.Item.Exercise)}"))}");
    }

    private static string Sure(WeekView view, string id, Exercise exercise)
        => view.Week.Player(id).Needs.FirstOrDefault(n => n.IsNeed && n.IsServedBy(exercise))?.Probability is { } p ? Words.Sure(p) : "";
}
