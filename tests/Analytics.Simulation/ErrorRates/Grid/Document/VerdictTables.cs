using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Simulation.ErrorRates.Grid.Verdicts;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid.Document;

/// <summary>What every verdict is worth.</summary>
internal static class VerdictTables
{
    private static readonly Verdict[] Clear = [Verdict.ClearGain, Verdict.ClearLoss];

    public static string Of(GridStudy study)
        => string.Join("\n", study.Verdicts.GroupBy(r => r.Entry).Select(of => $"**{of.Key.Name}**: {of.Key.Claim}. It states {Cells.Percent(of.Key.Nominal)} % clear verdicts on the unchanged at most.\n\n{Rule([.. of])}\n{Worst([.. of])}\n"));

    /// <summary>Single tests and normal errors.</summary>
    private static MarkdownTable Rule(IReadOnlyList<VerdictResult> results)
    {
        var table = new MarkdownTable("SWC [TE]", "df of TE", "false flag: clear, unchanged", "clear, changed by 1 SWC", "hit: clear gain, changed by 2 SWC", "missed: called too small, 2 SWC", "undecided, unchanged", "undecided, 2 SWC");
        foreach (var of in results.Where(r => r.Case is { Baseline: 1, Errors: ErrorKind.Normal }).GroupBy(r => r.Case))
        {
            VerdictResult At(double change) => of.First(r => r.TrueChange == change);
            var (none, one, two) = (At(0), At(of.Key.Worthwhile), At(2 * of.Key.Worthwhile));
            table.Row(Cells.Number(of.Key.Worthwhile), Cells.Degrees(of.Key.DegreesOfFreedom), Cells.Rate(none, Clear), Cells.Rate(one, Clear), Cells.Rate(two, Verdict.ClearGain),
                Cells.Rate(two, Verdict.TooSmallToMatter, Verdict.ClearLoss), Cells.Rate(none, Verdict.CannotTellYet), Cells.Rate(two, Verdict.CannotTellYet));
        }

        return table;
    }

    /// <summary>The worst false-flag rate of each kind of error and of more baseline tests, beside the nominal one.</summary>
    private static MarkdownTable Worst(IReadOnlyList<VerdictResult> results)
    {
        var table = new MarkdownTable("errors", "tests before", "nominal", "worst false-flag rate", "in the case", "worst clear rate at 1 SWC", "least hit rate at 2 SWC");
        foreach (var of in results.GroupBy(r => (r.Case.Errors, r.Case.Baseline)))
        {
            var worst = of.Where(r => r.TrueChange == 0).MaxBy(r => r.Clear)!;
            var one = of.Where(r => r.TrueChange == r.Case.Worthwhile).MaxBy(r => r.Clear)!;
            var least = of.Where(r => r.TrueChange == 2 * r.Case.Worthwhile).MinBy(r => r.Hit)!;
            table.Row(of.Key.Errors.Words(), Cells.Number(of.Key.Baseline), Cells.Percent(worst.Entry.Nominal), Cells.Rate(worst, Clear), Short(worst.Case), Cells.Rate(one, Clear), Cells.Rate(least, Verdict.ClearGain));
        }

        return table;
    }

    /// <summary>Hit rate over the size of the true change, worthwhile change half a typical error, single tests.</summary>
    public static MarkdownTable Curve(GridStudy study)
    {
        var lines = study.Verdicts.Where(r => r.Case.IsOnCurve).GroupBy(r => (r.Entry, r.Case.DegreesOfFreedom)).Where(g => g.Key.DegreesOfFreedom is 9 or 19 or double.PositiveInfinity).ToList();
        var table = new MarkdownTable(["true change [TE]", .. lines.Select(l => $"{l.Key.Entry.Name}, df {Cells.Degrees(l.Key.DegreesOfFreedom)}")]);
        foreach (var change in ChangeCase.Curve.Where(c => c * 2 == Math.Round(c * 2)))
            table.Row([Cells.Number(change), .. lines.Select(l => Cells.Percent(change == 0 ? l.First(r => r.TrueChange == 0).Clear : l.First(r => r.TrueChange == change).Hit))]);
        return table;
    }

    private static string Short(ChangeCase the) => $"SWC {Cells.Number(the.Worthwhile)} TE, df {Cells.Degrees(the.DegreesOfFreedom)}";
}
