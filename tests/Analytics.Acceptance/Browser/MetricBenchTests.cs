using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;

namespace Analytics.Acceptance.Browser;

[Collection(BrowserTests.Name)]
public sealed class MetricBenchTests(BrowserFixture browser) : ReportBars(browser)
{
    private protected override MadeReport Report => ReportSet.Bench;

    private protected override MadeReport Hostile => ReportSet.HostileBench;

    // The target of design for every report.
    private protected override int LargestBytes => 1_600_000;

    // A strip and the overlaps for each of three ideas, and two of the report.
    private protected override int FewestCharts => 8;

    [ChromiumFact]
    public async Task Bench_OnADesk_AnswersForEveryIdeaInTheFirstView()
    {
        await using var open = await Browser.OpenAsync(ReportSet.Bench, 1280);
        Assert.Equal(3, await open.Page.Locator(".an li").CountAsync());
        var answers = await open.Page.Locator(".an").BoundingBoxAsync();
        Assert.InRange(answers!.Y + answers.Height, 0, 800);
    }

    [ChromiumFact]
    public async Task Bench_EveryCard_NamesThreeWeakPoints()
    {
        await using var open = await Browser.OpenAsync(ReportSet.Bench, 1280);
        var points = open.Page.Locator(".co:has-text('The three weakest points')");
        Assert.Equal(3, await points.CountAsync());
        for (var i = 0; i < 3; i++) Assert.Equal(3, await points.Nth(i).Locator("li").CountAsync());
    }

    [ChromiumFact]
    public async Task Bench_InTheReport_MarksWhatIsOnTrial()
    {
        await using var open = await Browser.OpenAsync(ReportSet.Bench, 1280);
        Assert.True(await open.Page.Locator("figcaption:has-text('trial metric')").CountAsync() > 0);
    }
}
