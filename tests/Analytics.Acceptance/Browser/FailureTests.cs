using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;
using Deque.AxeCore.Playwright;

namespace Analytics.Acceptance.Browser;

[Collection(BrowserTests.Name)]
public sealed class FailureTests(BrowserFixture browser)
{
    [ChromiumFact]
    public async Task FailedCell_Banner_NamesItAndLeadsToIt()
    {
        var report = ReportSet.Failing;
        Assert.Equal(2, report.ExitCode);
        Assert.Contains("failing.ipynb stopped at cell 2, line 3: IndexOutOfRangeException", report.Said, StringComparison.Ordinal);
        await using var open = await browser.OpenAsync(report, 390);
        Assert.Empty(open.Complaints);
        Assert.Contains("made before", await open.Page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
        await open.Page.Locator(".how").EvaluateAsync("d => d.open = false");
        await open.Page.Locator(".banner a").ClickAsync();
        var code = open.Page.GetByText("one[5] = 2;");
        await Microsoft.Playwright.Assertions.Expect(code).ToBeInViewportAsync();
    }

    [ChromiumFact]
    public async Task FailedReport_HasNoAccessibilityViolationAndShowsAllText()
    {
        await using var open = await browser.OpenAsync(ReportSet.Failing, 390);
        Assert.Empty((await open.Page.RunAxe()).Violations.Select(v => v.Id + ": " + v.Help));
        Assert.Empty(await open.AskAsync(Layout.Clipped));
    }
}
