using Analytics.Simulation.ErrorRates.Grid.Rates;

namespace Analytics.Simulation.ErrorRates.Grid.Document;

/// <summary>The other rates, and the report's rule on whole squads.</summary>
internal static class RateTables
{
    public static string Others(GridStudy study)
        => string.Join("\n", study.Rates.GroupBy(r => r.Entry).Where(g => g.Key is not ReportRule).Select(of => $"**{of.Key.Name}**: {of.Key.Claim}.\n\n{Table(of)}"));

    public static MarkdownTable Report(GridStudy study)
    {
        var table = new MarkdownTable(["rate", "ICC", "df of TE", .. ReportRule.Athletes.Select(n => $"{n} players")]);
        var known = study.Rates.Where(r => r.Entry is ReportRule).ToDictionary(r => r.Case.Label, r => r.Count);
        foreach (var question in ReportRule.Questions)
        {
            foreach (var icc in ReportRule.Reliabilities)
            {
                foreach (var df in ReportRule.Degrees)
                {
                    if (!known.ContainsKey(ReportRule.Label(ReportRule.Athletes[0], df, icc, question))) continue;
                    table.Row([question, icc.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture), Cells.Number(df),
                        .. ReportRule.Athletes.Select(n => Cells.Rate(known[ReportRule.Label(n, df, icc, question)]))]);
                }
            }
        }

        return table;
    }

    private static MarkdownTable Table(IEnumerable<RateResult> results)
    {
        var table = new MarkdownTable("case", "stated", "measured", "closed form");
        foreach (var r in results) table.Row(r.Case.Label, Cells.Percent(r.Case.Nominal), Cells.Rate(r.Count), Cells.Percent(r.Case.ClosedForm));
        return table;
    }
}
