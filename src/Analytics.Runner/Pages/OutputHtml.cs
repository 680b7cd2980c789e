using Analytics.Runner.Outputs;

namespace Analytics.Runner.Pages;

/// <summary>The richest form of an output a page can show.</summary>
internal static class OutputHtml
{
    public static string Render(CellOutput output, string label) => output switch
    {
        StreamOutput stream => Plain(stream.Text, stream.IsError ? "console warning" : "console"),
        DisplayOutput display => Render(display, label),
        // The banner and the appendix tell about the failure.
        _ => "",
    };

    private static string Render(DisplayOutput display, string label)
    {
        if (display.Form("text/html") is { } html)
            return html;
        if (display.Form("image/svg+xml") is { } svg)
            return svg;
        if (display.Form("image/png") is { } png)
            return $"<img alt=\"Picture made by {Html.Text(label)}\" src=\"data:image/png;base64,{Html.Text(png.Trim())}\">";
        if (display.Form("text/markdown") is { } markdown)
            return Prose.ToHtml(markdown, headingsDown: 1);
        return display.Form("text/plain") is { } text ? Plain(text, "value") : "";
    }

    private static string Plain(string text, string look) => $"<pre class=\"{look}\">{Html.Text(text.TrimEnd())}</pre>";
}
