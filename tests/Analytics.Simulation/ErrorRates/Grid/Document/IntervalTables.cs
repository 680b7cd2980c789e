using Analytics.Simulation.ErrorRates.Grid.Intervals;
using Analytics.Simulation.ErrorRates.Grid.Tables;

namespace Analytics.Simulation.ErrorRates.Grid.Document;

/// <summary>Coverage of every interval, and where it is not what is claimed.</summary>
public static class IntervalTables
{
    /// <summary>What an interval in a report must keep with normal errors and ten athletes or more.</summary>
    public const double Least = 0.935, Most = 0.965;

    public static MarkdownTable Normal(GridStudy study)
    {
        var table = new MarkdownTable(["interval", "claims to hold", .. TableCell.AthleteCounts.Select(n => $"{n} athletes"), "worst case"]);
        foreach (var of in study.Intervals.GroupBy(r => r.Entry))
        {
            var cells = of.Where(r => Case(r) == ErrorKind.Normal).ToList();
            if (cells.Count == 0) continue;
            var worst = cells.MaxBy(r => r.Off)!;
            table.Row([Starred(of.Key), of.Key.Claim,
                .. TableCell.AthleteCounts.Select(n => Cells.Range([.. cells.Where(r => r.Cell.Athletes == n).Select(r => r.Covered.Rate)])),
                $"{Cells.Rate(worst.Covered)}: {Short(worst.Cell)}"]);
        }

        return table;
    }

    /// <summary>Every kind of error in which some case lies outside the band by more than two Monte Carlo errors, with its worst case.</summary>
    public static MarkdownTable NotHolding(GridStudy study)
    {
        var table = new MarkdownTable("interval", "errors", "cases outside", "nominal", "worst coverage", "in the case");
        foreach (var of in study.Intervals.GroupBy(r => (r.Entry, r.Cell.Errors)))
        {
            var outside = of.Where(IsOutside).ToList();
            if (outside.Count == 0) continue;
            var worst = outside.MaxBy(r => r.Off)!;
            table.Row(Starred(of.Key.Entry), of.Key.Errors.Words(), $"{outside.Count} of {of.Count()}", Cells.Percent(of.Key.Entry.Nominal), Cells.Rate(worst.Covered), Short(worst.Cell)
                + (worst.None > 0 ? $"; none given in {Cells.Percent((double)worst.None / (worst.None + worst.Covered.Draws))} %" : ""));
        }

        return table;
    }

    public static bool IsOutside(IntervalResult result)
    {
        var margin = 2 * result.Covered.MonteCarloError;
        return result.Covered.Rate < result.Entry.Nominal - (0.95 - Least) - margin || result.Covered.Rate > result.Entry.Nominal + (Most - 0.95) + margin;
    }

    private static string Starred(IntervalUnderTest entry) => entry.Name + (entry.InReports ? " *" : "");

    // Log-normal values are the normal case of a method that takes logarithms.
    private static ErrorKind Case(IntervalResult result) => result.Entry.Cells.All(c => c.Errors == ErrorKind.Proportional) ? ErrorKind.Normal : result.Cell.Errors;

    private static string Short(TableCell cell) => FormattableString.Invariant($"{cell.Athletes} athletes, {cell.Trials} trials, ICC {cell.Reliability:0.00}");
}
