using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Needs;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The coach's targets, folded, each with how many it could be held against.</summary>
internal static class TargetsBlock
{
    /// <summary>Targets the page shows: on that of a player those of his group.</summary>
    public static IReadOnlyList<GroupTarget> Of(WeekView view)
        => view.Only is { } only ? [.. view.Week.Training.Targets.Where(t => IsFor(view, t, only.Group))] : view.Week.Training.Targets;

    public static Block Listed(WeekView view, IReadOnlyList<GroupTarget> targets)
    {
        var rows = targets.Select(t => (Target: t, Metric: MetricCatalogue.Get(t.MetricId))).ToList();
        var table = DataTable.Of("Targets", rows, t =>
        {
            t.Text("Group", r => r.Target.Group ?? "all groups").Text("Test", r => r.Metric.Label).Numeric("Target", "", r => PlanPlayers.Show(view.Week.Season, r.Metric, r.Target.Value));
            // A note may name anybody, and how many were tested is the coach's matter.
            if (view.Only is null) t.Text("Tested", r => Tested(view, r.Target, r.Metric)).Text("Note", r => r.Target.Note);
        });
        return new Folded(targets.Count == 1 ? "The target of the coach" : Invariant($"All {targets.Count} targets of the coach"),
            [table, new Note("A target is held against results on the squad's own scale, with the timing, start and method it was tested with; a time by hand is not one by gates. A group's own target goes before that of all groups.")]) { ScreenOnly = true };
    }

    // That of a group goes before that of all.
    private static bool IsFor(WeekView view, GroupTarget target, string group)
        => target.Group == group || (target.Group is null && !view.Week.Training.Targets.Any(t => t.Group == group && t.MetricId == target.MetricId));

    private static Cell Tested(WeekView view, GroupTarget target, Metric metric)
    {
        var players = view.Week.Squad.Players.Where(p => IsFor(view, target, p.Group)).Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        if (players.Count == 0) return new("nobody of it trains this week");
        var days = view.Week.Season.Days.Where(d => d.Date <= view.Week.Choice.Monday).Select(d => MetricDay.Of(metric, d.Athletes)).Where(d => d.Values.Count > 0).ToList();
        var tested = days.SelectMany(d => d.Values).Select(v => v.AthleteId).Where(players.Contains).Distinct().Count();
        return tested == 0 ? new("nobody yet, so it has no effect") : new(Words.PlayersOf(tested, players.Count), Words.Scale(days[^1].Series));
    }
}
