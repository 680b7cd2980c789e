using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Plans;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Who needs what, how sure that is, and what the week does for it.</summary>
internal static class NeedsOfWeek
{
    public static ReportBlock Of(WeekView view)
    {
        var rows = view.Players.SelectMany(p => p.Needs.Where(n => n.IsNeed).Select(n => (Player: p, Need: n)))
            .OrderBy(r => r.Need.Quality).ThenBy(r => r.Need.Half).ThenByDescending(r => r.Need.Probability).ToList();
        var open = view.Players.SelectMany(p => p.Needs.Where(n => n.Probability is null).Select(n => (Player: p, Need: n))).ToList();
        List<Block> body = [];
        var unread = WeekFlags.UnreadTargets(view);
        if (unread > 0) body.Add(new Note($"{Words.Capital(Words.Count(unread))} {(unread == 1 ? "row" : "rows")} of training/targets.csv could not be read and {(unread == 1 ? "holds" : "hold")} nobody to a target (list at the end)."));
        if (rows.Count > 0)
            body.Add(DataTable.Of("Needs", rows, t => t
                .Text("Player", r => new Cell(r.Player.Name, view.Only is null ? r.Player.Group : ""))
                .Text("Need", r => r.Need.What)
                .Numeric("How sure", "", r => Words.Sure(r.Need.Probability ?? 0))
                .Text("What the week does", r => Served(view, r.Player, r.Need))
                .Text("What it rests on", r => Words.Signs(r.Need.Reason))));
        if (open.Count > 0)
            body.Add(CannotSay(view, open));
        // Said only of what the page may show: on a player's own page the targets of his group.
        var against = TargetsBlock.Of(view).Count > 0 ? "; where the coach has set a target, of being worse than that target" : "";
        var threshold = view.Week.Training.Rules.Value(Planning.Rules.RuleIds.NeedProbability) / 100;
        return new Section(view.Only is null ? "Who gets extra work, and why" : "What you get extra work on, and why",
            rows.Count > 0 ? $"A need takes at least {Figures.Percent(threshold)} probability of being behind the own group by more than too small to matter{against}." : "No evidence yet: no test shows a need clearly enough. That does not show that there is none.", [.. body]);
    }

    // Most of a squad share a few reasons: no test of it, the same box, the same old day.
    private static Folded CannotSay(WeekView view, IReadOnlyList<(PlanPlayer Player, QualityNeed Need)> open)
    {
        var rows = open.GroupBy(r => (r.Need.What, r.Need.Reason)).OrderByDescending(g => g.Count()).ThenBy(g => g.First().Need.Quality).ThenBy(g => g.First().Need.Half).ToList();
        return new Folded($"What the tests cannot say: {Words.Count(rows.Count)} {(rows.Count == 1 ? "reason" : "reasons")}", [DataTable.Of("What the tests cannot say", rows, t => t
            .Text("Of", r => r.Key.What)
            .Text("Why", r => Words.Signs(r.Key.Reason))
            .Text("Players", r => view.Only is not null ? r.First().Player.Name : r.Count() > 3 ? new Cell(Words.PlayersOf(r.Count(), view.Players.Count)) : Words.List([.. r.Select(p => p.Player.Name)])), 120)]) { ScreenOnly = true };
    }

    private static Cell Served(WeekView view, PlanPlayer player, QualityNeed need)
    {
        if (view.Plan is null) return new("no plan yet");
        var sets = view.Needs.FirstOrDefault(n => n.AthleteId == player.Id && n.Quality == need.Quality && n.Half == need.Half);
        if (sets is { OwnSets: > 0 })
            return new(FormattableString.Invariant($"{sets.OwnSets} sets of own work"), string.Join("; ", view.Week.Sessions.Where(s => s.Players.Contains(player.Id))
                .SelectMany(s => s.Own.Where(o => need.IsServedBy(o.Item.Exercise) && (o.ForNeed.Contains(player.Id) || o.ByDefault.Contains(player.Id))).Select(o => $"{o.Item.Exercise.Name}, {WeekWords.ShortDay(s.Slot.Date)}"))));
        return new("no own work", sets?.Reason ?? "", Tone.Loss);
    }
}
