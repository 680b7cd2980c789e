using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;
using Microsoft.Playwright;

namespace Analytics.Acceptance.Browser;

/// <summary>What every report must hold in a browser; a report derives from it and names its pages.</summary>
public abstract class ReportBars(BrowserFixture browser)
{
    private protected BrowserFixture Browser => browser;

    private protected abstract MadeReport Report { get; }

    /// <summary>The same of a season whose names are markup.</summary>
    private protected abstract MadeReport Hostile { get; }

    private protected abstract int LargestBytes { get; }

    /// <summary>Fewest charts drawn live.</summary>
    private protected abstract int FewestCharts { get; }

    private protected virtual int MostPrintedPages => 40;

    [ChromiumFact]
    public async Task Report_OpenedFromDisk_DrawsItsChartsWithoutARequestOrAComplaint()
    {
        Assert.InRange(new FileInfo(Report.Page).Length, 1, LargestBytes);
        await using var open = await browser.OpenAsync(Report);
        Assert.Equal([Report.PageUrl], open.Requests);
        Assert.Empty(open.Complaints);
        Assert.Empty(open.Dialogs);
        var figures = await open.Page.Locator(".fig:has(.fig-data)").CountAsync();
        Assert.True(figures >= FewestCharts, $"only {figures} charts");
        Assert.Equal(figures, await open.Page.Locator(".fig[data-drawn=true]").CountAsync());
    }

    [ChromiumFact]
    public async Task Report_OnADeskAPhoneAndPaper_HasNoAccessibilityViolation()
    {
        foreach (var width in new[] { 1280, 390 })
        {
            await using var open = await browser.OpenAsync(Report, width: width);
            await open.AssertAccessibleAsync();
            await open.UnfoldAsync();
            await open.AssertAccessibleAsync();
            await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
            await open.AssertAccessibleAsync();
        }
    }

    [ChromiumFact]
    public async Task Report_AtThreeSizes_ShowsAllText()
    {
        foreach (var report in new[] { Report, Hostile })
        {
            foreach (var width in new[] { 390, 820, 1440 })
            {
                await using var open = await browser.OpenAsync(report, width);
                Assert.Empty(await open.AskAsync(Layout.Clipped));
                Assert.Empty(await open.AskAsync(Layout.Overlapping));
                await open.UnfoldAsync();
                Assert.Empty(await open.AskAsync(Layout.Clipped));
            }
        }
    }

    [ChromiumFact]
    public async Task Report_Printed_ShowsAllTextOnA4AndLetter()
    {
        foreach (var (format, millimetres) in new[] { ("A4", 210), ("Letter", 215.9) })
        {
            await using var open = await browser.OpenAsync(Report);
            await open.Page.SetViewportSizeAsync((int)((millimetres - 26) / 25.4 * 96), 1000);
            await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
            Assert.Empty(await open.AskAsync(Layout.Clipped));
            var printed = PrintedFile.Read(await open.Page.PdfAsync(new PagePdfOptions { Format = format }));
            Assert.InRange(printed.Pages.Count, 1, MostPrintedPages);
            Assert.True(printed.HasFonts, "the text is not text");
        }
    }

    [ChromiumFact]
    public async Task Report_EveryPicture_HasANameAndItsNumbersAsATable()
    {
        await using var open = await browser.OpenAsync(Report);
        Assert.Empty(await open.AskAsync("""
            () => Array.from(document.querySelectorAll(".fig")).flatMap(f => {
              const name = document.getElementById(f.getAttribute("aria-labelledby")), faults = [];
              if (!name || !f.contains(name) || !name.textContent.trim()) faults.push("no name: " + f.outerHTML.slice(0, 80));
              if (!f.querySelector("table td")) faults.push("no numbers: " + (name && name.textContent));
              for (const svg of f.querySelectorAll("svg[role=img]")) if (!svg.getAttribute("aria-label")) faults.push("picture without words: " + (name && name.textContent));
              return faults;
            })
            """));
        Assert.True(await open.Page.Locator(".fig").CountAsync() >= FewestCharts);
    }

    [ChromiumFact]
    public async Task Report_OfNamesThatAreMarkup_ShowsThemAsTextAndRunsNothing()
    {
        await using var open = await browser.OpenAsync(Hostile, 1280);
        Assert.Empty(open.Dialogs);
        Assert.Empty(open.Complaints);
        Assert.Equal([Hostile.PageUrl], open.Requests);
        Assert.Equal(0, await open.Page.Locator("img, [onerror], [onclick]").CountAsync());
        await open.UnfoldAsync();
        Assert.Contains(HostileSeason.Athlete, await open.Page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
    }
}
