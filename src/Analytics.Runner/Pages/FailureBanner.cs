using System.Globalization;

namespace Analytics.Runner.Pages;

/// <summary>Tells first thing that a report is not complete, why, and where to look.</summary>
internal static class FailureBanner
{
    public static string Make(string notebook, PageCell cell)
    {
        var failure = cell.Failure!;
        var line = failure.Line is { } number ? string.Create(CultureInfo.InvariantCulture, $", line {number}") : "";
        return $"""
            <section class="banner" aria-labelledby="not-complete">
            <h2 id="not-complete">This report is not complete</h2>
            <p>{Html.Text(notebook)} stopped at <a href="#code-{cell.Anchor}">{Html.Text(cell.Label)}{line}</a>. What follows was made before that.</p>
            <pre>{Html.Text(failure.Message)}</pre>
            </section>

            """;
    }
}
