using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Blocks;

/// <summary>Several blocks as the result of one cell, below each other.</summary>
public sealed class Together : ReportBlock
{
    private readonly IReadOnlyList<Block> _blocks;

    /// <summary>Blocks in reading order.</summary>
    /// <param name="blocks">The blocks; none gives an empty output.</param>
    public Together(params IEnumerable<Block> blocks) => _blocks = [.. blocks];

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        html.Raw("<div class=\"st-b\">");
        foreach (var block in _blocks)
        {
            html.Raw("<div>");
            WriteInner(html, block);
            html.Raw("</div>");
        }
        html.Raw("</div>");
    }

    /// <inheritdoc/>
    public override string ToText() => Join(_blocks.Select(b => b.ToText()));
}
