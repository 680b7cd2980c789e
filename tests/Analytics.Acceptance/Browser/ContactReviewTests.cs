using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;

namespace Analytics.Acceptance.Browser;

[Collection(BrowserTests.Name)]
public sealed class ContactReviewTests(BrowserFixture browser) : ReportBars(browser)
{
    private protected override MadeReport Report => ReportSet.Review;

    private protected override MadeReport Hostile => ReportSet.HostileReview;

    private protected override int LargestBytes => 2_000_000;

    private protected override int FewestCharts => 3;

    [ChromiumFact]
    public async Task Review_EveryPosture_IsSaidInWords()
    {
        await using var open = await Browser.OpenAsync(ReportSet.Review);
        var postures = await open.Page.Locator(".sf svg").CountAsync();
        Assert.True(postures > 0);
        Assert.Equal(postures, await open.Page.Locator(".sf svg[aria-label]").CountAsync());
    }
}
