using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;
using Microsoft.Playwright;

namespace Analytics.Acceptance.Browser;

[Collection(BrowserTests.Name)]
public sealed class TrainingWeekTests(BrowserFixture browser) : ReportBars(browser)
{
    private protected override MadeReport Report => ReportSet.Week;

    private protected override MadeReport Hostile => ReportSet.HostileWeek;

    private protected override int LargestBytes => 1_000_000;

    // It has tables, no pictures.
    private protected override int FewestCharts => 0;

    // 32 sheets, and what stands round them.
    private protected override int MostPrintedPages => 50;

    // Across, less the margins of the sheet: 11 mm at the sides, 9 mm above and below.
    [ChromiumFact]
    public async Task Week_Printed_HasEachSheetOnAPageOfItsOwnInReadableType()
    {
        foreach (var (width, height) in new[] { (297 - 22, 210 - 18), (279.4 - 22, 215.9 - 18) })
        {
            await using var open = await Browser.OpenAsync(Report);
            await open.Page.SetViewportSizeAsync((int)(width / 25.4 * 96), 1000);
            await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
            var heights = await open.Page.EvaluateAsync<double[]>("() => Array.from(document.querySelectorAll('.sh')).map(s => s.getBoundingClientRect().height)");
            Assert.Equal(32, heights.Length);
            Assert.All(heights, h => Assert.InRange(h, 100, height / 25.4 * 96));
            // Loads in points; a sheet without one tells nothing.
            var loads = await open.Page.EvaluateAsync<double[]>("() => Array.from(document.querySelectorAll('.sh')).map(s => (s.currentCSSZoom || 1) * Math.max(...Array.from(s.querySelectorAll('.mx td b')).map(b => parseFloat(getComputedStyle(b).fontSize))) * .75)");
            Assert.All(loads.Where(double.IsFinite), l => Assert.True(l >= 9, $"a load in {l} points"));
        }
    }

    [ChromiumFact]
    public async Task Week_OnADesk_AnswersFirst()
    {
        await using var open = await Browser.OpenAsync(Report, 1280);
        Assert.Equal(3, await open.Page.Locator(".an li").CountAsync());
        var answers = await open.Page.Locator(".an").BoundingBoxAsync();
        Assert.InRange(answers!.Y + answers.Height, 0, 800);
    }

    [ChromiumFact]
    public async Task Week_PlanFile_IsSavedFromThePageAsItStandsBesideIt()
    {
        await using var open = await Browser.OpenAsync(Report, 1280);
        var saved = await open.Page.RunAndWaitForDownloadAsync(() => open.Page.Locator("a[download]").ClickAsync());
        Assert.Equal("plan.csv", saved.SuggestedFilename);
        Assert.Equal(File.ReadAllText(Path.ChangeExtension(Report.Page, ".csv")), File.ReadAllText(await saved.PathAsync()));
        Assert.Empty(open.Complaints);
    }
}
