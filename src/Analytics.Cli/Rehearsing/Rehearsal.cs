using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.TestingDay;
using Analytics.Runner.Outputs;
using Analytics.Runner.Pages;

namespace Analytics.Cli.Rehearsing;

/// <summary>
/// Goes once through what a testing day asks of the library, on a small season that comes with the program. Most of
/// a short run is the run time making machine code of what is called for the first time; here that happens on
/// the second processor while the first compiles the notebook's cells. Nothing of it is kept or shown.
/// </summary>
/// <param name="season">The small season's folder.</param>
internal sealed class Rehearsal(string season)
{
    /// <summary>Where the small season lies beside the program.</summary>
    public static string OwnSeason { get; } = Path.Combine(AppContext.BaseDirectory, "rehearsal");

    /// <summary>Rehearses. A failure stays in here: the notebook's own run will meet it, if it concerns it, and tell.</summary>
    /// <param name="charts">The chart library of the page.</param>
    /// <returns>The page that came of it, or null when it did not come to that.</returns>
    public string? Run(ChartScript charts)
    {
        try
        {
            return Page([.. Blocks(TestingDayReport.Open(season)).Select(Output)], charts);
        }
#pragma warning disable CA1031 // Whatever it is, a run must not end because its rehearsal did.
        catch (Exception)
#pragma warning restore CA1031
        {
            return null;
        }
    }

    // In the order of the notebook, so that the rehearsal stays ahead of the run.
    private static IEnumerable<Block> Blocks(TestingDayReport report)
    {
        yield return report.Head();
        yield return report.Answers();
        yield return report.WhereGroupsStand();
        yield return report.WhoChanged();
        yield return report.WhatPlayersCarry();
        yield return report.Needs();
        yield return report.Cautions();
        yield return report.Results();
        yield return report.WhoWasTested();
        yield return report.HeldBack();
        yield return report.Methods();
        yield return report.Provenance();
    }

    private static DisplayOutput Output(Block block)
        => new([new OutputForm("text/html", block.ToHtml()), new OutputForm("text/plain", block.ToText())], IsResult: true);

    private static string Page(IReadOnlyList<DisplayOutput> outputs, ChartScript charts) => ReportPage.Make(new PageModel
    {
        Notebook = "rehearsal.ipynb",
        Charts = charts,
        Cells = [new PageCell { IsCode = false, Anchor = "part-1", Source = "# Rehearsal" }, new PageCell { IsCode = true, Anchor = "part-2", Source = "", Outputs = outputs }],
        Provenance = new Provenance { NotebookSha256 = "", Settings = [], Library = LibraryName.Text, Ending = "complete", Started = DateTimeOffset.UnixEpoch, Took = TimeSpan.Zero },
    });
}
