using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;
using Microsoft.Playwright;

namespace Analytics.Acceptance.Browser;

/// <summary>One browser for all browser tests.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    public async Task InitializeAsync()
    {
        if (Found.Chromium is not { } chromium)
            return;
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = chromium,
            Headless = true,
            // Chromium refuses its sandbox to the super-user, whom containers like.
            Args = Environment.UserName == "root" ? ["--no-sandbox"] : [],
        });
    }

    /// <summary>Opens a report as a file, at a window width, and waits until it is done drawing.</summary>
    internal async Task<OpenPage> OpenAsync(MadeReport report, int width = 1280, bool scripts = true, string fragment = "")
    {
        Assert.True(browser is not null, "No browser was found, and skips are forbidden: install Chromium or name it in ANALYTICS_CHROMIUM.");
        var context = await browser.NewContextAsync(new BrowserNewContextOptions
        {
            JavaScriptEnabled = scripts,
            ViewportSize = new ViewportSize { Width = width, Height = 900 },
        });
        var page = await OpenPage.OnAsync(context);
        await page.Page.GotoAsync(report.PageUrl + fragment);
        if (scripts)
            await page.Page.Locator("html[data-ready=true]").WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Attached });
        return page;
    }

    public async Task DisposeAsync()
    {
        if (browser is not null)
            await browser.DisposeAsync();
        playwright?.Dispose();
    }
}

/// <summary>The tests that share the browser.</summary>
[CollectionDefinition(Name)]
public sealed class BrowserTests : ICollectionFixture<BrowserFixture>
{
    public const string Name = "browser";
}
