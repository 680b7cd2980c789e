using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Analytics.Acceptance.Browser;

[Collection(BrowserTests.Name)]
public sealed class ContactReviewTests(BrowserFixture browser)
{
    private const int LargestBytes = 2_000_000;
    private const int FewestCharts = 3;

    [ChromiumFact]
    public async Task Review_OpenedFromDisk_DrawsItsChartsWithoutARequestOrAComplaint()
    {
        Assert.InRange(new FileInfo(ReportSet.Review.Page).Length, 1, LargestBytes);
        await using var open = await browser.OpenAsync(ReportSet.Review);
        Assert.Equal([ReportSet.Review.PageUrl], open.Requests);
        Assert.Empty(open.Complaints);
        Assert.Empty(open.Dialogs);
        var figures = await open.Page.Locator(".fig:has(.fig-data)").CountAsync();
        Assert.True(figures >= FewestCharts, $"only {figures} charts");
        Assert.Equal(figures, await open.Page.Locator(".fig[data-drawn=true]").CountAsync());
    }

    [ChromiumFact]
    public async Task Review_OnADeskAPhoneAndPaper_HasNoAccessibilityViolation()
    {
        foreach (var width in new[] { 1280, 390 })
        {
            await using var open = await browser.OpenAsync(ReportSet.Review, width: width);
            await AssertAccessibleAsync(open);
            await open.UnfoldAsync();
            await AssertAccessibleAsync(open);
            await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
            await AssertAccessibleAsync(open);
        }
    }

    [ChromiumFact]
    public async Task Review_AtThreeSizes_ShowsAllText()
    {
        foreach (var report in new[] { ReportSet.Review, ReportSet.HostileReview })
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
    public async Task Review_Printed_ShowsAllText()
    {
        await using var open = await browser.OpenAsync(ReportSet.Review);
        await open.Page.SetViewportSizeAsync((int)((210 - 26) / 25.4 * 96), 1000);
        await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        Assert.Empty(await open.AskAsync(Layout.Clipped));
        var printed = PrintedFile.Read(await open.Page.PdfAsync(new PagePdfOptions { Format = "A4" }));
        Assert.InRange(printed.Pages.Count, 1, 40);
        Assert.True(printed.HasFonts, "the text is not text");
    }

    [ChromiumFact]
    public async Task Review_EveryPicture_HasANameAndItsNumbersAsATable()
    {
        await using var open = await browser.OpenAsync(ReportSet.Review);
        Assert.Empty(await open.AskAsync("""
            () => Array.from(document.querySelectorAll(".fig")).flatMap(f => {
              const name = document.getElementById(f.getAttribute("aria-labelledby")), faults = [];
              if (!name || !f.contains(name) || !name.textContent.trim()) faults.push("no name: " + f.outerHTML.slice(0, 80));
              if (!f.querySelector("table td")) faults.push("no numbers: " + (name && name.textContent));
              for (const svg of f.querySelectorAll(".sf svg")) if (!svg.getAttribute("aria-label")) faults.push("posture without words: " + name.textContent);
              return faults;
            })
            """));
        Assert.True(await open.Page.Locator(".sf svg").CountAsync() > 0);
    }

    [ChromiumFact]
    public async Task Review_OfNamesThatAreMarkup_ShowsThemAsTextAndRunsNothing()
    {
        await using var open = await browser.OpenAsync(ReportSet.HostileReview, 1280);
        Assert.Empty(open.Dialogs);
        Assert.Empty(open.Complaints);
        Assert.Equal([ReportSet.HostileReview.PageUrl], open.Requests);
        Assert.Equal(0, await open.Page.Locator("img, [onerror], [onclick]").CountAsync());
        Assert.Contains(HostileSeason.Athlete, await open.Page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
    }

    private static async Task AssertAccessibleAsync(OpenPage open)
    {
        var result = await open.Page.RunAxe();
        Assert.Empty(result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}"));
    }
}
