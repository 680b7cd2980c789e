using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;
using Microsoft.Playwright;

namespace Analytics.Acceptance.Browser;

[Collection(BrowserTests.Name)]
public sealed class LayoutTests(BrowserFixture browser)
{
    [ChromiumFact]
    public Task Report_OnAPhone_ShowsAllText() => AssertAllTextShowsAsync(ReportSet.Demo, 390);

    [ChromiumFact]
    public Task Report_OnATablet_ShowsAllText() => AssertAllTextShowsAsync(ReportSet.Demo, 820);

    [ChromiumFact]
    public Task Report_OnADesk_ShowsAllText() => AssertAllTextShowsAsync(ReportSet.Demo, 1440);

    [ChromiumFact]
    public async Task Report_OfLongHostileNames_ShowsAllText()
    {
        foreach (var width in new[] { 390, 820, 1440 })
            await AssertAllTextShowsAsync(ReportSet.Hostile, width);
    }

    [ChromiumFact]
    public async Task Report_NarrowedWhileOpen_ShowsAllText()
    {
        await using var open = await browser.OpenAsync(ReportSet.Demo, 1440);
        await open.Page.SetViewportSizeAsync(390, 844);
        await open.Page.WaitForTimeoutAsync(1000);
        Assert.Empty(await open.AskAsync(Layout.Clipped));
    }

    [ChromiumFact]
    public Task Report_PrintedOnA4_ShowsAllText() => AssertPrintsAsync("A4", (595, 842), widthMillimetres: 210);

    [ChromiumFact]
    public Task Report_PrintedOnLetter_ShowsAllText() => AssertPrintsAsync("Letter", (612, 792), widthMillimetres: 215.9);

    private async Task AssertAllTextShowsAsync(MadeReport report, int width)
    {
        await using var open = await browser.OpenAsync(report, width);
        Assert.Empty(await open.AskAsync(Layout.Clipped));
        Assert.Empty(await open.AskAsync(Layout.Overlapping));
        await open.UnfoldAsync();
        Assert.Empty(await open.AskAsync(Layout.Clipped));
    }

    private async Task AssertPrintsAsync(string format, (int Width, int Height) points, double widthMillimetres)
    {
        // The page's own margins are 13 mm at the sides; a CSS pixel is 25.4/96 mm.
        var textWidth = (int)((widthMillimetres - 26) / 25.4 * 96);
        await using var open = await browser.OpenAsync(ReportSet.Demo);
        await open.Page.SetViewportSizeAsync(textWidth, 1000);
        await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        Assert.Empty(await open.AskAsync(Layout.Clipped));
        Assert.Equal(0, await open.Page.Locator(".fig-live:visible").CountAsync());
        Assert.True(await open.Page.Locator(".fig-static:visible").CountAsync() >= 6);

        var pdf = await open.Page.PdfAsync(new PagePdfOptions { Format = format });
        var printed = PrintedFile.Read(pdf);
        // Chromium rounds a sheet up to whole CSS pixels, which is up to a point.
        Assert.All(printed.Pages, p =>
        {
            Assert.InRange(p.Width, points.Width, points.Width + 1);
            Assert.InRange(p.Height, points.Height, points.Height + 1);
        });
        Assert.InRange(printed.Pages.Count, 1, 40);
        Assert.True(printed.HasFonts, "the text is not text");
    }
}
