using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Blocks;

/// <summary>Something the reader must see before trusting the rest: what was held back, and why.</summary>
public sealed class Callout : ReportBlock
{
    private readonly string _headline;
    private readonly IReadOnlyList<string> _lines;

    /// <summary>A headline with lines under it.</summary>
    /// <param name="headline">One sentence, for example <c>612 rows read, 604 kept, 8 held back.</c></param>
    /// <param name="lines">One line for each thing; may be none.</param>
    public Callout(string headline, params IEnumerable<string> lines)
    {
        _headline = headline;
        _lines = [.. lines];
    }

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        html.Add($"<div class=\"co\"><p><b>{_headline}</b></p>");
        WriteList(html, _lines);
        html.Raw("</div>");
    }

    /// <inheritdoc/>
    public override string ToText() => string.Join('\n', _lines.Select(l => "- " + l).Prepend("! " + _headline));

    internal static void WriteList(Markup html, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0) return;
        html.Raw("<ul>");
        foreach (var line in lines) html.Add($"<li>{line}</li>");
        html.Raw("</ul>");
    }
}
