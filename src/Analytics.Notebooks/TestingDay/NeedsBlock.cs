using System.Globalization;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.TestingDay;

/// <summary>What each player most needs next; left blank where the tests cannot say.</summary>
internal static class NeedsBlock
{
    public static Block Of(DayContext day)
    {
        var needs = day.Needs.Athletes.Where(n => day.WasTested(n.AthleteId)).ToList();
        var named = needs.Where(n => n.First is not null || n.ClearLosses.Count > 0).OrderBy(n => Order(day, n)).ThenByDescending(n => n.First?.Probability ?? 0).ToList();
        var open = needs.Where(n => n.First is null && n.ClearLosses.Count == 0).ToList();
        List<Block> blocks = [];
        if (named.Count > 0)
        {
            blocks.Add(DataTable.Of("First need by player", named, t => t
                .Text("Player", n => new Cell(day.Name(n.AthleteId), day.Athlete(n.AthleteId).Position))
                .Text("Group", n => n.Group)
                .Text("First need", n => n.First is { } first ? new Cell(Words.Capital(Words.Name(first.Quality))) : new Cell(null))
                .Text("Why", n => Why(day, n))
                .Numeric("How sure", "", n => n.First is { } first ? new Cell(Words.Sure(first.Probability)) : Cell.Missing)));
        }

        if (open.Count > 0)
            blocks.Add(new Folded($"{Words.Capital(Words.Players(open.Count))} for whom the tests cannot say", [.. open.GroupBy(n => n.Undecided)
                .Select(g => new Note($"{Words.Capital(g.Key ?? "no reason")}: {string.Join(", ", g.Select(n => day.Name(n.AthleteId)))}."))]));
        blocks.Add(new Note(string.Create(CultureInfo.InvariantCulture,
            $"A need is named when the player is behind the middle of his group, by more than too small to matter, with at least {Figures.Percent(day.Needs.Threshold)} probability. {Looks(day.Needs)}A clear loss asks about health and the testing day before training.")));
        return new Section("Who needs what next", "Only where the tests can say so. Needs are against the middle of the player's own group.", [.. blocks]);
    }

    private static string Looks(SquadNeeds needs)
    {
        var made = string.Create(CultureInfo.InvariantCulture, $"{needs.Looks} {(needs.Looks == 1 ? "comparison was" : "comparisons were")} made");
        return needs.Looks == 0 ? ""
            : needs.Named == 0 ? $"{made} and no need named. "
            : string.Create(CultureInfo.InvariantCulture, $"{made} and {needs.Named} {(needs.Named == 1 ? "need" : "needs")} named; {Words.Wrong(needs.ExpectedWrong, needs.Named)}. ");
    }

    private static int Order(DayContext day, Need need) => ((List<string>)[.. day.Groups]).IndexOf(need.Group);

    private static Cell Why(DayContext day, Need need)
    {
        var losses = need.ClearLosses.Select(l => $"{Words.Short(l.Metric)} {day.Unit(l.Metric).ChangeText(l.Change.Difference, l.Change.Interval)} since {Words.ShortDate(day.Before!.Date)}: clear loss, check health first");
        var reason = need.First is { } first ? Reason(day, first) : "";
        string[] also = need.Also.Count == 0 ? [] : [$"also behind in {Words.List([.. need.Also.Select(a => Words.Name(a.Quality)).Distinct()])}"];
        var notes = string.Join("; ", need.First is null ? [] : losses.Concat(also));
        return need.First is null ? new Cell(Words.Capital(string.Join("; ", losses)), "", Tone.Loss) : new Cell(reason, notes);
    }

    private static string Reason(DayContext day, QualityBehind need)
    {
        var unit = day.Unit(need.Metric);
        var standing = need.Standing;
        // Nobody is "0.0 behind": a gap that would round to nothing gets one more decimal, and so do its two ends.
        var decimals = unit.DecimalsFor([new(standing.Difference, standing.Difference)]);
        string Text(double value) => Figures.Plain(unit.Of(value), decimals, unit.Symbol);
        return $"{Words.Capital(Words.Short(need.Metric))} {Text(standing.Value.Value)}; group middle {Text(standing.Middle)}, {Text(Math.Abs(standing.Difference))} behind";
    }
}
