using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.People;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Who is out, who trains within restrictions, who needs a test first.</summary>
internal static class SquadBlock
{
    private sealed record Line(string Name, string Group, string What, string Why);

    public static Block Of(WeekContext week)
    {
        string Group(string id) => week.Season.Athletes.FirstOrDefault(a => a.Id == id)?.Group ?? "";
        List<Line> lines =
        [
            .. week.Squad.Out.Select(o => new Line(o.Name, Group(o.AthleteId), "out, not planned", o.Reason)),
            .. week.Squad.PartlyOut.Select(o => new Line(o.Name, Group(o.AthleteId), "out on some days", o.Reason)),
            .. week.Squad.Limited.Select(o => new Line(o.Name, Group(o.AthleteId), "limited", o.Reason)),
            .. week.Squad.Players.SelectMany(p => p.Restrictions.Where(r => Concerns(week, r) && !r.IsEverything).Select(r => new Line(p.Name, p.Group, $"restricted: {What(week, r)}", r.Note))),
            .. week.Squad.Players.SelectMany(p => TestFirst(week, p)),
        ];
        if (lines.Count == 0) return new Together();
        return new Section("Who needs a closer look", "Restrictions are what licensed staff have said; the plan keeps them and judges none.",
            DataTable.Of("Out, restricted, or without a test", lines, t => t.Text("Player", l => new Cell(l.Name, l.Group)).Text("What", l => Words.Capital(l.What)).Text("Why", l => Words.Capital(l.Why))));
    }

    private static bool Concerns(WeekContext week, Restriction restriction)
        => restriction.From <= week.Choice.Monday.AddDays(6) && (restriction.To is null || restriction.To >= week.Choice.Monday);

    private static string What(WeekContext week, Restriction r)
        => r.ExerciseId is { } id ? week.Training.Exercises.Find(id)?.Name ?? id
            : r.Pattern is { } pattern ? Planning.Exercises.MovementPatterns.Name(pattern) : Planning.Exercises.TrainedQualities.Name(r.Quality!.Value);

    private static IEnumerable<Line> TestFirst(WeekContext week, PlanPlayer player)
    {
        var open = week.Sessions.Where(s => s.Players.Contains(player.Id)).SelectMany(s => s.For(player.Id).Select(i => (Item: i, week.Loads(player.Id, i, s.Slot.Date).Instead)))
            .Where(i => i.Instead?.StartsWith("test first", StringComparison.Ordinal) == true).ToList();
        if (open.Count > 0)
            yield return new(player.Name, player.Group, $"test first: {Words.List([.. open.Select(o => o.Item.Exercise.Name).Distinct()])}", open[0].Instead!);
    }
}
