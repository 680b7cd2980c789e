using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Blocks;

/// <summary>Plain paragraphs.</summary>
public sealed class Prose : ReportBlock
{
    private readonly IReadOnlyList<string> _paragraphs;

    /// <summary>One or more paragraphs of plain text.</summary>
    /// <param name="paragraphs">Their text.</param>
    public Prose(params IEnumerable<string> paragraphs) => _paragraphs = [.. paragraphs];

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        foreach (var paragraph in _paragraphs) html.Add($"<p class=\"tx\">{paragraph}</p>");
    }

    /// <inheritdoc/>
    public override string ToText() => Join(_paragraphs);
}

/// <summary>A small grey remark under a figure or table.</summary>
/// <param name="Text">The remark.</param>
public sealed class Note(string Text) : ReportBlock
{
    /// <inheritdoc/>
    public override void WriteHtml(Markup html) => html.Add($"<p class=\"nt\">{Text}</p>");

    /// <inheritdoc/>
    public override string ToText() => Text;
}
