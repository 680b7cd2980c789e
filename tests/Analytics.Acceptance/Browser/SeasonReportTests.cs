using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;

namespace Analytics.Acceptance.Browser;

[Collection(BrowserTests.Name)]
public sealed class SeasonReportTests(BrowserFixture browser) : ReportBars(browser)
{
    private protected override MadeReport Report => ReportSet.Season;

    private protected override MadeReport Hostile => ReportSet.HostileSeasonReport;

    private protected override int LargestBytes => 2_000_000;

    private protected override int FewestCharts => 10;

    [ChromiumFact]
    public async Task Season_WithoutScripts_ShowsEveryChartAsAPicture()
    {
        await using var open = await Browser.OpenAsync(ReportSet.Season, scripts: false);
        var figures = await open.Page.Locator(".fig").CountAsync();
        Assert.Equal(figures, await open.Page.Locator(".fig > .fig-static:has(svg)").CountAsync());
    }

    [ChromiumFact]
    public async Task Season_OnADesk_AnswersBeforeItShows()
    {
        await using var open = await Browser.OpenAsync(ReportSet.Season, 1280);
        Assert.Equal(4, await open.Page.Locator(".an li").CountAsync());
        var (answers, first) = (await open.Page.Locator(".an").BoundingBoxAsync(), await open.Page.Locator(".fig").First.BoundingBoxAsync());
        Assert.True(answers!.Y + answers.Height < first!.Y);
        // The four answers and the head stand in the first view of a desk.
        Assert.InRange(answers.Y + answers.Height, 0, 800);
    }
}
