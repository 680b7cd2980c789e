using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;
using Analytics.Planning.People;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Why each thing is in the week: the need it serves and how sure that is; what found no place; what was left out.</summary>
internal static class WhyBlock
{
    public static Block Of(WeekContext week)
    {
        List<Block> blocks = [];
        var named = week.Squad.Players.SelectMany(p => p.Needs.Where(n => n.IsNeed).Select(n => (Player: p, Need: n))).ToList();
        if (named.Count > 0)
        {
            blocks.Add(DataTable.Of("Needs and the work that serves them", named, t => t
                .Text("Player", n => new Cell(n.Player.Name, n.Player.Group))
                .Text("Need", n => new Cell(Words.Capital(n.Need.Quality.Name()), n.Need.Reason))
                .Numeric("How sure", "", n => new Cell(Words.Sure(n.Need.Probability ?? 0)))
                .Text("Own work this week", n => Served(week, n.Player, n.Need))));
        }

        var open = week.Squad.Players.Where(p => !p.Needs.Any(n => n.IsNeed)).ToList();
        if (open.Count > 0)
            blocks.Add(new Folded($"{Words.Capital(Words.Players(open.Count))} on the group's balanced default", [DataTable.Of("What the tests can and cannot say of them", open, t => t
                .Text("Player", p => new Cell(p.Name, p.Group))
                .Text("Nearest to a need", p => Nearest(p))
                .Text("Cannot be said", p => string.Join(", ", p.Needs.Where(n => n.Probability is null).Select(n => n.Quality.Name()))))]));
        blocks.Add(Exercises(week));
        if (week.Answer.Plan is { LeftOut.Count: > 0 } plan)
            blocks.Add(new Folded($"Left out by a rule: {plan.LeftOut.Select(l => l.What).Distinct().Count()} exercises or parts", [DataTable.Of("Left out, and why", plan.LeftOut.GroupBy(l => (l.What, l.Reason)), t => t
                .Text("What", g => Words.Capital(g.Key.What))
                .Text("For whom", g => string.Join(", ", g.Select(l => l.Group).Distinct()))
                .Text("Why", g => g.Key.Reason))]));
        return new Section("Why this work", "A need is named where the tests make it probable enough; everybody else does what his group does, balanced over the qualities.", blocks);
    }

    private static Cell Served(WeekContext week, PlanPlayer player, QualityNeed need)
    {
        var served = week.Answer.Plan?.Needs.FirstOrDefault(n => n.AthleteId == player.Id && n.Quality == need.Quality);
        if (served is null) return new("no plan");
        if (served.OwnSets == 0) return new("none", served.Reason ?? "", Tone.Loss);
        var items = week.Sessions.Where(s => s.Players.Contains(player.Id)).SelectMany(s => s.Own.Where(o => need.IsServedBy(o.Item.Exercise) && (o.ForNeed.Contains(player.Id) || o.ByDefault.Contains(player.Id)))
            .Select(o => $"{s.Slot.Date.ToString("ddd", CultureInfo.InvariantCulture)} {o.Item.Exercise.Name}"));
        return new(string.Create(CultureInfo.InvariantCulture, $"{served.OwnSets} sets"), string.Join(", ", items));
    }

    private static Cell Nearest(PlanPlayer player)
        => player.Needs.Where(n => n.Probability is not null).MaxBy(n => n.Probability) is { } nearest
            ? new Cell($"{Words.Capital(nearest.Quality.Name())}, {Words.Sure(nearest.Probability!.Value)}", nearest.Reason) : new Cell(null, "no test can be compared");

    private static Folded Exercises(WeekContext week)
    {
        var used = week.Sessions.SelectMany(s => s.Shared.Concat(s.Own.Select(o => o.Item)).Select(i => (Session: s, Item: i)))
            .GroupBy(u => u.Item.Exercise.Id).OrderBy(g => g.First().Item.Exercise.Quality).ThenBy(g => g.First().Item.Exercise.Name, StringComparer.Ordinal).ToList();
        return new($"Every exercise of the week: {used.Count}", [DataTable.Of("What each exercise is for", used, t => t
            .Text("Exercise", g => new Cell(Words.Capital(g.First().Item.Exercise.Name), g.First().Item.Exercise.Caution))
            .Text("Trains", g => Words.Capital(g.First().Item.Exercise.Quality.Name()))
            .Text("Serves the need of", g => Whom(week, [.. g.Select(u => u.Session)], g.First().Item.Exercise))
            .Text("When", g => string.Join("; ", g.GroupBy(u => u.Session.Slot.Date).Select(d => $"{d.Key.ToString("ddd", CultureInfo.InvariantCulture)}: {string.Join(", ", d.Select(u => u.Session.Group).Distinct())}"))))]);
    }

    private static Cell Whom(WeekContext week, IReadOnlyList<Planning.Plans.UnitSession> sessions, Exercise exercise)
    {
        var players = sessions.SelectMany(s => s.Players).Distinct().Select(week.Player).Where(p => p.Needs.Any(n => n.IsNeed && n.IsServedBy(exercise))).Select(p => p.Name).ToList();
        return players.Count == 0 ? new("nobody's named need", "balanced default of the day") : new(players.Count <= 6 ? string.Join(", ", players) : $"{string.Join(", ", players.Take(5))} and {players.Count - 5} more");
    }
}
