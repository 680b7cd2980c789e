using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;
using Analytics.Notebooks.AthletePage;
using Analytics.Notebooks.Blocks;
using Analytics.Runner.Outputs;
using Analytics.Runner.Pages;
using Analytics.Season;
using Microsoft.Playwright;

namespace Analytics.Acceptance.Browser;

/// <summary>Every page of the demo season, and some no season should hold, on one sheet each. The pages are put together in the test, without a run each.</summary>
[Collection(BrowserTests.Name)]
public sealed class AthletePagesPrintTests(BrowserFixture browser)
{
    private static readonly string Settings = "season = \"data-demo\"; earlier = \"\"; share = \"names\"; athlete = \"TC01\"; day = \"latest\"; since = \"first\"; barStep = 5";

    [ChromiumFact]
    public async Task DemoPages_AllSixty_PrintOnOneSheet()
    {
        var season = SeasonReader.Read(Repository.DemoSeason);
        await AssertOneSheetAsync(season, [.. season.Athletes.Select(a => a.Id)]);
    }

    [ChromiumFact]
    public async Task OddPages_LongNameInjuredLimitedUntested_PrintOnOneSheet()
    {
        var season = SeasonReader.Read(Repository.DemoSeason);
        var day = season.Days[^1].Date;
        Athlete Odd(Athlete a) => a.Id switch
        {
            "TC01" => a with { Name = string.Join(' ', Enumerable.Repeat("Bartholomew-Featherstonehaugh", 6)) },
            "TC02" => a with { Absences = [new Absence(day, null, "injured")] },
            "TC03" => a with { Absences = [new Absence(day, null, "limited")] },
            _ => a,
        };
        season = season with { Athletes = [.. season.Athletes.Select(Odd), new Athlete { Id = "TC99", Name = "Nobody Yet", Position = "", Group = "Receivers" }] };
        await AssertOneSheetAsync(season, ["TC01", "TC02", "TC03", "TC99"]);
    }

    private async Task AssertOneSheetAsync(SeasonData season, IReadOnlyList<string> players)
    {
        var folder = Directory.CreateTempSubdirectory("analytics-pages-").FullName;
        List<string> faults = [];
        foreach (var id in players)
        {
            var file = Path.Combine(folder, id + ".html");
            await File.WriteAllTextAsync(file, Page(AthletePageReport.Open(season, id)));
            await using var open = await browser.OpenAsync(new MadeReport(0, "", file, ""));
            foreach (var format in new[] { "A4", "Letter" })
            {
                var printed = PrintedFile.Read(await open.Page.PdfAsync(new PagePdfOptions { Format = format }));
                if (printed.Pages.Count != 1) faults.Add($"{id} takes {printed.Pages.Count} sheets of {format}");
            }
        }

        Assert.Empty(faults);
    }

    private static string Page(AthletePageReport page)
    {
        Block[][] cells =
        [
            [page.Head(), page.Answers()], [page.WhereYouStand()], [page.YourChange()], [page.NextLoads(), page.BeforeYouLift()],
            [page.HowToRead(), page.LeftOut(), page.Provenance()],
        ];
        return ReportPage.Make(new PageModel
        {
            Notebook = "athlete-page.ipynb",
            Cells = [.. cells.Select((blocks, i) => new PageCell { IsCode = true, Anchor = $"part-{i}", Source = "", Outputs = [.. blocks.Select(Output)] })],
            // As long a foot as a run writes.
            Provenance = new Provenance { NotebookSha256 = new string('8', 64), Settings = [], Library = "Contact Readiness Notebooks 0.1.0 " + Settings, Ending = "complete", Started = DateTimeOffset.UnixEpoch, Took = TimeSpan.Zero },
        });
    }

    private static DisplayOutput Output(Block block) => new([new OutputForm("text/html", block.ToHtml()), new OutputForm("text/plain", block.ToText())], IsResult: true);
}
