using System.Net;
using System.Text;

namespace Analytics.Runner.Proofs;

/// <summary>
/// Reads off a piece of the page what it tells: headings, lines, tables. The proof is made of what this reads, and
/// it is read again when a report is verified, so what a reader sees and what is proved are the same.
/// </summary>
public sealed class ContentReader
{
    private static readonly HashSet<string> Inline = new(StringComparer.Ordinal) { "b", "i", "em", "strong", "span", "small", "a", "code", "time", "sub", "sup", "img" };

    private readonly List<PageItem> items = [];
    private readonly StringBuilder text = new();
    private readonly StringBuilder drawn = new();
    private TableReader? table;
    private string figure = "";
    private int drawings;

    private ContentReader()
    {
    }

    /// <summary>Reads a piece of a page.</summary>
    /// <param name="html">The piece.</param>
    public static IReadOnlyList<PageItem> Read(string html)
    {
        ArgumentNullException.ThrowIfNull(html);
        var reader = new ContentReader();
        foreach (var token in HtmlTokens.Of(html))
            reader.Take(token);
        reader.EndLine();
        reader.EndTable();
        return reader.items;
    }

    private void Take(HtmlToken token)
    {
        switch (token)
        {
            case { Kind: HtmlTokenKind.Text, Name: "" }:
                (drawings > 0 ? drawn : text).Append(token.Text);
                break;
            case { Kind: HtmlTokenKind.Text }:
                break; // a script or a style
            case { Name: "svg" }:
                drawings = Math.Max(0, drawings + (token.Kind == HtmlTokenKind.Open ? 1 : -1));
                EndDrawnWords();
                break;
            case { } when drawings > 0:
                if (token.Kind == HtmlTokenKind.Close && token.Name is "text" or "title")
                    EndDrawnWords();
                break;
            case { } when Inline.Contains(token.Name):
                if (token.Kind == HtmlTokenKind.Open)
                    text.Append(' ');
                break;
            default:
                TakeBlock(token);
                break;
        }
    }

    private void TakeBlock(HtmlToken token)
    {
        if (token.Opens("table"))
        {
            EndLine();
            EndTable();
            table = new TableReader(figure);
        }
        else if (table is not null)
        {
            if (token.Name is "caption" or "th" or "td" or "tr" or "table")
                table.Take(token, TakeText());
            else
                text.Append(' ');
            if (token.Closes("table"))
                EndTable();
        }
        else if (token.Kind == HtmlTokenKind.Close && token.Name is "h1" or "h2" or "h3" or "h4" or "h5" or "h6" or "figcaption")
        {
            var heading = TakeText();
            figure = token.Name == "figcaption" ? heading : "";
            if (heading.Length > 0)
                items.Add(new PageHeading(heading));
        }
        else
        {
            EndLine();
            if (token.Closes("figure"))
                figure = "";
        }
    }

    private void EndLine()
    {
        if (TakeText() is { Length: > 0 } line)
            items.Add(new PageLine(line));
    }

    private void EndDrawnWords()
    {
        if (TakeText(drawn) is { Length: > 0 } words)
            items.Add(new PageDrawing(words));
    }

    private void EndTable()
    {
        if (table?.Result() is { } result)
            items.Add(result);
        table = null;
    }

    private string TakeText() => TakeText(text);

    private static string TakeText(StringBuilder from)
    {
        var taken = Spaces(WebUtility.HtmlDecode(from.ToString()));
        from.Clear();
        return taken;
    }

    // Only the spaces a browser folds are folded: the thin ones before units are part of the text.
    private static string Spaces(string text)
        => string.Join(' ', text.Split([' ', '\n', '\t', '\r', '\f'], StringSplitOptions.RemoveEmptyEntries));
}
