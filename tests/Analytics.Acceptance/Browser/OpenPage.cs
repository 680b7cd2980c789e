using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Analytics.Acceptance.Browser;

/// <summary>A page with everything it asked for, complained about or popped up.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    private readonly IBrowserContext context;

    private OpenPage(IBrowserContext context, IPage page)
    {
        this.context = context;
        Page = page;
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith("data:", StringComparison.Ordinal) && !request.Url.StartsWith("blob:", StringComparison.Ordinal))
                Requests.Add(request.Url);
        };
        page.RequestFailed += (_, request) =>
        {
            if (request.Failure == "csp")
                Refused.Add(request.Url);
        };
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
                Complaints.Add(message.Text);
        };
        page.PageError += (_, error) => Complaints.Add(error);
        page.Dialog += (_, dialog) =>
        {
            Dialogs.Add(dialog.Message);
            _ = dialog.DismissAsync();
        };
    }

    public IPage Page { get; }

    /// <summary>Every address asked for, the page's own first.</summary>
    public List<string> Requests { get; } = [];

    /// <summary>Those of them that the content policy refused: they never left the browser.</summary>
    public List<string> Refused { get; } = [];

    /// <summary>Errors and warnings on the console, those of the content policy among them.</summary>
    public List<string> Complaints { get; } = [];

    public List<string> Dialogs { get; } = [];

    /// <summary>Unfolds everything that is folded.</summary>
    public Task UnfoldAsync() => Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");

    /// <summary>Fails with what the accessibility rules find, and where.</summary>
    public async Task AssertAccessibleAsync()
    {
        var result = await Page.RunAxe();
        Assert.Empty(result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}"));
    }

    public static async Task<OpenPage> OnAsync(IBrowserContext context) => new(context, await context.NewPageAsync());

    /// <summary>A script's answer as a list of texts.</summary>
    public async Task<IReadOnlyList<string>> AskAsync(string script) => await Page.EvaluateAsync<string[]>(script);

    public async ValueTask DisposeAsync() => await context.DisposeAsync();
}
