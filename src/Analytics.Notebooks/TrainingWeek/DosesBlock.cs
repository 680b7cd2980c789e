using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Dose;
using Analytics.Planning.People;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The dose against its limits: of each group the player who comes closest, everything that is over by name.</summary>
internal static class DosesBlock
{
    private sealed record Row(PlanPlayer Player, DoseLine Line, int Players);

    public static ReportBlock Of(WeekView view)
    {
        if (view.Plan is null) return new Together();
        var all = view.Players.SelectMany(p => view.Week.Dose(p).Lines.Where(l => l.Limit is not null && l.Amount is not null).Select(l => (Player: p, Line: l))).ToList();
        var over = all.Where(l => l.Line.RuleId is not null && l.Line.IsWithin == false).ToList();
        var guides = all.Where(l => l.Line.RuleId is null && l.Line.IsWithin == false).Select(l => l.Line.Subject).Distinct().ToList();
        var rows = all.GroupBy(l => (l.Player.Group, l.Line.RuleId, l.Line.What, l.Line.Subject))
            .Select(g => new Row(g.MaxBy(l => Share(l.Line)).Player, g.MaxBy(l => Share(l.Line)).Line, g.Select(l => l.Player.Id).Distinct().Count())).ToList();
        var lead = Invariant($"{all.Count} amounts have a limit or guide. ") + (over.Count == 0 ? "Every limit is kept." : Invariant($"{over.Count} are over their limit; the plan says so because the rule is only flagged."))
            + (guides.Count > 0 ? $" Shorter rest than the guide: {Words.List(guides)}." : "");
        return new Section("The dose against published limits", lead,
            over.Count == 0 ? new Together() : Table("Over the limit", [.. over.Select(o => new Row(o.Player, o.Line, 1))], view),
            new Folded(view.Only is null ? "All doses: of each group the player closest to the limit" : "All your doses", [Table("Doses and limits", rows, view)]) { ScreenOnly = true });
    }

    private static DataTable Table(string caption, IReadOnlyList<Row> rows, WeekView view) => DataTable.Of(caption, rows, t => t
        .Text("What", r => new Cell($"{r.Line.Subject}, {r.Line.What}", r.Line.Note ?? ""))
        .Text(view.Only is null ? "Closest" : "When", r => new Cell(view.Only is null ? r.Player.Name : When(r.Line), view.Only is null ? $"{r.Player.Group}, {When(r.Line)}" : ""))
        .Numeric("Amount", "", r => Figures.Plain(r.Line.Amount, Decimals(r.Line), r.Line.Unit))
        .Numeric("Limit", "", r => (r.Line.IsLeast ? "least " : "most ") + Figures.Plain(r.Line.Limit, Decimals(r.Line), r.Line.Unit))
        .Text("Kept", r => r.Line.IsWithin == true ? new Cell("within") : new Cell(r.Line.RuleId is null ? "less than the guide" : "over", "", Tone.Loss))
        .Text("Source", r => r.Line.Source));

    private static string When(DoseLine line) => line.Session is { } slot ? WeekWords.ShortDay(slot.Date) : line.Day is { } day ? WeekWords.ShortDay(day) : "the week";

    private static int Decimals(DoseLine line) => line.Amount is { } amount && Math.Abs(amount - Math.Round(amount)) > 1e-9 ? 1 : 0;

    private static double Share(DoseLine line) => line.IsLeast ? line.Limit!.Value / Math.Max(line.Amount!.Value, 1e-9) : line.Amount!.Value / Math.Max(line.Limit!.Value, 1e-9);
}
