using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Dose;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The dose against its limits: by group the highest amount any player of it has, with the limit that is his.</summary>
internal static class DosesBlock
{
    private sealed record Peak(string Group, DateOnly? Date, string Player, DoseLine Line);

    public static Block Of(WeekContext week)
    {
        if (week.Answer.Plan is not { } plan) return new Together();
        var lines = week.Squad.Players.SelectMany(p => week.Dose(p.Id).Lines.Select(l => new Peak(p.Group, l.Session?.Date, p.Name, l))).ToList();
        var limited = lines.Where(l => l.Line is { Limit: > 0, RuleId: not null }).ToList();
        var peaks = limited.GroupBy(l => (l.Group, l.Line.RuleId, l.Line.What)).Select(g => g.MaxBy(l => (l.Line.Amount ?? 0) / l.Line.Limit!.Value)!)
            .OrderBy(l => l.Line.RuleId, StringComparer.Ordinal).ThenBy(l => l.Group, StringComparer.Ordinal).ThenBy(l => l.Line.What, StringComparer.Ordinal).ToList();
        var over = limited.Count(l => l.Line.IsWithin == false);
        List<Block> blocks = [];
        if (plan.Flags.Count > 0)
            blocks.Add(DataTable.Of("Flagged: a rule that may be broken and is", plan.Flags, t => t
                .Text("Where", f => f.Subject).Text("What", f => new Cell(Words.Capital(f.Text), week.Rules[f.RuleId].Label, Tone.Loss)).Text("Source", f => week.Rules[f.RuleId].Source)));
        blocks.Add(DataTable.Of("Highest dose of each group against its limit", peaks, t => t
            .Text("Group", l => new Cell(l.Group, l.Player))
            .Text("What", l => new Cell(Words.Capital(l.Line.Subject == "session" ? l.Line.What : $"{l.Line.Subject}: {l.Line.What}"), l.Date is { } date ? SheetWords.ShortDay(date) : "in the week"))
            .Numeric("Planned", "", l => new Cell(Figures.Plain(l.Line.Amount, 0, l.Line.Unit)))
            .Numeric("Limit", "", l => new Cell(Figures.Plain(l.Line.Limit, 0, l.Line.Unit), l.Line.IsLeast ? "least" : "most"))
            .Text("Kept", l => new Cell(l.Line.IsWithin == false ? "no" : "yes", l.Line.Note ?? "", l.Line.IsWithin == false ? Tone.Loss : Tone.Plain))
            .Text("Source", l => l.Line.Source)));
        var totals = week.Squad.Players.GroupBy(p => p.Group).Select(g => (Group: g.Key, Doses: g.Select(p => week.Dose(p.Id)).ToList())).ToList();
        blocks.Add(new Folded("Sets, contacts and volume-load of the week by group", [DataTable.Of("The week's amounts, middle of the group", totals, t => t
            .Text("Group", g => g.Group)
            .Numeric("Ground contacts", "", g => new Cell(Figures.Plain(Middle(g.Doses, "ground contacts"), 0)))
            .Numeric("Hard sets", "", g => new Cell(Figures.Plain(Middle(g.Doses, "hard sets"), 0)))
            .Numeric("Volume-load", week.Bar.Symbol, g => new Cell(Figures.Plain(Middle(g.Doses, "volume-load") * week.Bar.PerKilogram, 0))))]));
        return new Section("Dose against limits", string.Create(CultureInfo.InvariantCulture,
            $"{limited.Count} limits were looked at, {(over == 0 ? "none is passed" : $"{over} {(over == 1 ? "is" : "are")} passed and flagged")}. The amounts are added up from the sheets, not taken from the planner."), blocks);
    }

    private static double? Middle(IReadOnlyList<DoseSheet> doses, string what)
    {
        var sums = doses.Select(d => d.Lines.Where(l => l.What.StartsWith(what, StringComparison.Ordinal)).Sum(l => l.Amount ?? 0)).Order().ToList();
        return sums.Count == 0 ? null : (sums[(sums.Count - 1) / 2] + sums[sums.Count / 2]) / 2;
    }
}
