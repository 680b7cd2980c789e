using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;
using Microsoft.Playwright;

namespace Analytics.Acceptance.Browser;

[Collection(BrowserTests.Name)]
public sealed class ReportInBrowserTests(BrowserFixture browser)
{
    private const int LargestBytes = 1_600_000;
    private const int FewestCharts = 6;

    [ChromiumFact]
    public async Task Report_OpenedFromDisk_DrawsItsChartsWithoutARequestOrAComplaint()
    {
        await using var open = await browser.OpenAsync(ReportSet.Demo);
        Assert.Equal([ReportSet.Demo.PageUrl], open.Requests);
        Assert.Empty(open.Complaints);
        Assert.Empty(open.Dialogs);
        var figures = await open.Page.Locator(".fig:has(.fig-data)").CountAsync();
        Assert.True(figures >= FewestCharts, $"only {figures} charts");
        Assert.Equal(figures, await open.Page.Locator(".fig[data-drawn=true]").CountAsync());
        Assert.Equal(figures, await open.Page.Locator(".fig-live:visible:has(.main-svg)").CountAsync());
        Assert.Equal(0, await open.Page.Locator(".fig:has(.fig-data) .fig-static:visible").CountAsync());
    }

    [ChromiumFact]
    public void Report_Size_IsWithinItsBounds()
        => Assert.InRange(new FileInfo(ReportSet.Demo.Page).Length, 1, LargestBytes);

    [ChromiumFact]
    public async Task Report_OnScreen_HasNoAccessibilityViolation()
    {
        await using var open = await browser.OpenAsync(ReportSet.Demo);
        await open.AssertAccessibleAsync();
        await open.UnfoldAsync();
        await open.AssertAccessibleAsync();
    }

    [ChromiumFact]
    public async Task Report_OnAPhone_HasNoAccessibilityViolation()
    {
        await using var open = await browser.OpenAsync(ReportSet.Demo, width: 390);
        await open.AssertAccessibleAsync();
    }

    [ChromiumFact]
    public async Task Report_InPrint_HasNoAccessibilityViolation()
    {
        await using var open = await browser.OpenAsync(ReportSet.Demo);
        await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        await open.AssertAccessibleAsync();
    }

    [ChromiumFact]
    public async Task Report_EveryFigure_HasANameAndItsNumbersAsATable()
    {
        await using var open = await browser.OpenAsync(ReportSet.Demo);
        var faults = await open.AskAsync("""
            () => Array.from(document.querySelectorAll(".fig")).flatMap(f => {
              const name = document.getElementById(f.getAttribute("aria-labelledby")), faults = [];
              if (!name || !f.contains(name) || !name.textContent.trim()) faults.push("no name: " + f.outerHTML.slice(0, 80));
              if (!f.querySelector("table td")) faults.push("no numbers: " + (name && name.textContent));
              return faults;
            })
            """);
        Assert.Empty(faults);
    }

    [ChromiumFact]
    public async Task Report_Keyboard_WalksThroughThePointsOfAChart()
    {
        await using var open = await browser.OpenAsync(ReportSet.Demo);
        var live = open.Page.Locator(".fig[data-drawn=true] .fig-live").First;
        await live.FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowRight");
        var said = open.Page.Locator(".fig[data-drawn=true] .fig-said").First;
        await Assertions.Expect(said).ToContainTextAsync(": ");
        var first = await said.TextContentAsync();
        await open.Page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(said).Not.ToHaveTextAsync(first!);
    }

    [ChromiumFact]
    public async Task Report_WithoutScripts_ShowsEveryChartAsAStillPictureOrItsTable()
    {
        await using var open = await browser.OpenAsync(ReportSet.Demo, scripts: false);
        var figures = await open.Page.Locator(".fig:has(.fig-data)").CountAsync();
        Assert.True(figures >= FewestCharts, $"only {figures} charts");
        Assert.Equal(0, await open.Page.Locator(".fig-live:visible").CountAsync());
        foreach (var still in await open.Page.Locator(".fig:has(.fig-data) .fig-static").AllAsync())
        {
            var box = await still.BoundingBoxAsync();
            Assert.True(box is { Width: > 100, Height: > 20 }, await still.InnerTextAsync());
            Assert.True(await still.Locator("svg, table").CountAsync() > 0);
        }

        Assert.Equal([ReportSet.Demo.PageUrl], open.Requests);
    }
}
