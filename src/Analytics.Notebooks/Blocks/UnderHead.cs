using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Blocks;

/// <summary>What a reader must know before the answers, between them and the head of a report.</summary>
internal sealed class UnderHead : ReportBlock
{
    private readonly IReadOnlyList<Block> _blocks;

    /// <summary>Blocks in reading order.</summary>
    /// <param name="blocks">At least one.</param>
    public UnderHead(params IEnumerable<Block> blocks) => _blocks = [.. blocks];

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        html.Raw("<div class=\"uh\">");
        foreach (var block in _blocks) WriteInner(html, block);
        html.Raw("</div>");
    }

    /// <inheritdoc/>
    public override string ToText() => Join(_blocks.Select(b => b.ToText()));
}
