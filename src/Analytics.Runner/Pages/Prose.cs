using Markdig;
using Markdig.Syntax;

namespace Analytics.Runner.Pages;

/// <summary>Markdown cells as HTML. HTML inside them is shown as the text it is.</summary>
internal static class Prose
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .DisableHtml()
        .Build();

    /// <summary>Renders a cell.</summary>
    /// <param name="markdown">Its text.</param>
    /// <param name="headingsDown">Levels by which its headings sink, so that a page keeps one heading of the first level.</param>
    public static string ToHtml(string markdown, int headingsDown)
    {
        var document = Markdown.Parse(markdown, Pipeline);
        foreach (var heading in document.Descendants<HeadingBlock>())
            heading.Level = Math.Min(6, heading.Level + headingsDown);
        return document.ToHtml(Pipeline);
    }

    /// <summary>The text of the first heading of the first level, or null.</summary>
    /// <param name="markdown">Text of a cell.</param>
    public static string? FirstHeading(string markdown)
    {
        var heading = Markdown.Parse(markdown, Pipeline).Descendants<HeadingBlock>().FirstOrDefault(h => h.Level == 1);
        return heading is null ? null : Markdown.ToPlainText(markdown.Substring(heading.Span.Start, heading.Span.Length), Pipeline).Trim();
    }
}
