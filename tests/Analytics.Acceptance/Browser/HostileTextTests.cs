using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;

namespace Analytics.Acceptance.Browser;

[Collection(BrowserTests.Name)]
public sealed class HostileTextTests(BrowserFixture browser)
{
    [ChromiumFact]
    public async Task Names_ThatAreMarkup_ShowAsTextAndRunNothing()
    {
        await using var open = await browser.OpenAsync(ReportSet.Hostile, 1280);
        Assert.Empty(open.Dialogs);
        Assert.Empty(open.Complaints);
        Assert.Equal([ReportSet.Hostile.PageUrl], open.Requests);
        Assert.Equal(0, await open.Page.Locator("img, [onerror], [onclick]").CountAsync());
        var text = await open.Page.Locator("main").InnerTextAsync();
        Assert.Contains(HostileSeason.Athlete, text, StringComparison.Ordinal);
        Assert.Contains(HostileSeason.Club, text, StringComparison.Ordinal);
    }

    [ChromiumFact]
    public async Task Names_ThatAreMarkup_ShowAsTextInLiveCharts()
    {
        await using var open = await browser.OpenAsync(ReportSet.Hostile, 1280);
        var words = await open.AskAsync("() => Array.from(document.querySelectorAll('.fig-live text'), t => t.textContent)");
        // Long names are cut in a chart; this much of them is always there.
        Assert.Contains(words, w => w.Contains("<img src=x", StringComparison.Ordinal));
        Assert.Contains(words, w => w.Contains("</script><b", StringComparison.Ordinal));
    }

    [ChromiumFact]
    public async Task Names_PointedAt_ShowAsText()
    {
        await using var open = await browser.OpenAsync(ReportSet.Hostile, 1280);
        var live = open.Page.Locator(".fig[data-drawn=true] .fig-live").First;
        await live.FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowRight");
        await Microsoft.Playwright.Assertions.Expect(open.Page.Locator(".fig-said").First).ToContainTextAsync("<img src=x");
        Assert.Equal(0, await open.Page.Locator("img").CountAsync());
        Assert.Empty(open.Dialogs);
    }

    [ChromiumFact]
    public async Task Outputs_WithScriptsOrAddresses_RunNothingAndFetchNothing()
    {
        await using var open = await browser.OpenAsync(ReportSet.Scripted);
        await open.Page.WaitForTimeoutAsync(500);
        Assert.Equal("undefined", await open.Page.EvaluateAsync<string>("() => typeof window.ran"));
        Assert.Equal([ReportSet.Scripted.PageUrl], open.Requests.Except(open.Refused));
        Assert.Contains(open.Complaints, c => c.Contains("Content Security Policy", StringComparison.Ordinal));
        Assert.Equal(1, await open.Page.Locator(".fig[data-drawn=true]").CountAsync());
        Assert.Contains("reaching out", await open.Page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
    }

    [ChromiumFact]
    public async Task MarkdownLink_ToAScript_RunsNothing()
    {
        await using var open = await browser.OpenAsync(ReportSet.Scripted);
        await open.Page.GetByText("link", new() { Exact = true }).ClickAsync();
        Assert.Equal("undefined", await open.Page.EvaluateAsync<string>("() => typeof window.ran"));
    }
}
