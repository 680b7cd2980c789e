using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;
using Analytics.Season;
using Microsoft.Playwright;

namespace Analytics.Acceptance.Browser;

[Collection(BrowserTests.Name)]
public sealed class AthletePageTests(BrowserFixture browser)
{
    private const int LargestBytes = 120_000;

    [ChromiumFact]
    public async Task Page_OpenedFromDisk_IsSmallAndAsksForNothing()
    {
        Assert.InRange(new FileInfo(ReportSet.Page.Page).Length, 1, LargestBytes);
        Assert.DoesNotContain("chart-library\"", File.ReadAllText(ReportSet.Page.Page).Replace("getElementById(\"chart-library\"", "", StringComparison.Ordinal), StringComparison.Ordinal);
        await using var open = await browser.OpenAsync(ReportSet.Page);
        Assert.Equal([ReportSet.Page.PageUrl], open.Requests);
        Assert.Empty(open.Complaints);
        Assert.Empty(open.Dialogs);
        Assert.Equal("Alden Brackwater", await open.Page.TitleAsync());
        Assert.Equal(2, await open.Page.Locator(".fig").CountAsync());
    }

    // Of the other players there is nothing in either file, wherever one looks.
    [ChromiumFact]
    public void Page_AndExecutedNotebook_NameNobodyElse()
    {
        var others = SeasonReader.Read(Repository.DemoSeason).Athletes.Skip(1).ToList();
        Assert.Equal(59, others.Count);
        foreach (var text in new[] { ReportSet.Page.Page, ReportSet.Page.Notebook }.Select(File.ReadAllText))
        {
            Assert.Contains("Alden Brackwater", text, StringComparison.Ordinal);
            Assert.DoesNotContain(others, a => text.Contains(a.Id, StringComparison.OrdinalIgnoreCase) || text.Contains(a.Name, StringComparison.OrdinalIgnoreCase));
        }
    }

    [ChromiumFact]
    public async Task Page_OnADeskAPhoneAndPaper_HasNoAccessibilityViolation()
    {
        foreach (var width in new[] { 1280, 390 })
        {
            await using var open = await browser.OpenAsync(ReportSet.Page, width: width);
            await open.AssertAccessibleAsync();
            await open.UnfoldAsync();
            await open.AssertAccessibleAsync();
            await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
            await open.AssertAccessibleAsync();
        }
    }

    [ChromiumFact]
    public async Task Page_AtThreeSizes_ShowsAllText()
    {
        foreach (var report in new[] { ReportSet.Page, ReportSet.HostilePage })
        {
            foreach (var width in new[] { 390, 820, 1440 })
            {
                await using var open = await browser.OpenAsync(report, width);
                Assert.Empty(await open.AskAsync(Layout.Clipped));
                await open.UnfoldAsync();
                Assert.Empty(await open.AskAsync(Layout.Clipped));
            }
        }
    }

    [ChromiumFact]
    public async Task Page_Printed_IsOneSheetThatShowsAllText()
    {
        foreach (var report in new[] { ReportSet.Page, ReportSet.HostilePage })
        {
            foreach (var (format, millimetres) in new[] { ("A4", 210), ("Letter", 216) })
            {
                await using var open = await browser.OpenAsync(report);
                await open.Page.SetViewportSizeAsync((int)((millimetres - 24) / 25.4 * 96), 1000);
                await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
                Assert.Empty(await open.AskAsync(Layout.Clipped));
                var printed = PrintedFile.Read(await open.Page.PdfAsync(new PagePdfOptions { Format = format }));
                Assert.Single(printed.Pages);
                Assert.True(printed.HasFonts, "the text is not text");
            }
        }
    }

    [ChromiumFact]
    public async Task Page_EveryPicture_HasANameWordsAndNumbers()
    {
        await using var open = await browser.OpenAsync(ReportSet.Page);
        Assert.Empty(await open.AskAsync("""
            () => Array.from(document.querySelectorAll(".fig")).flatMap(f => {
              const name = document.getElementById(f.getAttribute("aria-labelledby")), faults = [];
              if (!name || !f.contains(name) || !name.textContent.trim()) faults.push("no name: " + f.outerHTML.slice(0, 80));
              if (!f.querySelector("table td")) faults.push("no numbers: " + (name && name.textContent));
              for (const svg of f.querySelectorAll("td svg:not(svg svg)")) if (!svg.getAttribute("aria-label")) faults.push("no words: " + name.textContent);
              return faults;
            })
            """));
        Assert.True(await open.Page.Locator("td > svg[role=img]").CountAsync() >= 8);
    }

    [ChromiumFact]
    public async Task Page_WithoutScripts_ShowsTheSame()
    {
        await using var with = await browser.OpenAsync(ReportSet.Page);
        await using var without = await browser.OpenAsync(ReportSet.Page, scripts: false);
        Assert.Equal(await with.Page.Locator("main").InnerTextAsync(), await without.Page.Locator("main").InnerTextAsync());
    }

    [ChromiumFact]
    public async Task Page_OfANameThatIsMarkup_ShowsItAsTextAndRunsNothing()
    {
        await using var open = await browser.OpenAsync(ReportSet.HostilePage, 1280);
        Assert.Empty(open.Dialogs);
        Assert.Empty(open.Complaints);
        Assert.Equal([ReportSet.HostilePage.PageUrl], open.Requests);
        Assert.Equal(0, await open.Page.Locator("img, [onerror], [onclick]").CountAsync());
        Assert.Contains(HostileSeason.Athlete, await open.Page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
    }
}
