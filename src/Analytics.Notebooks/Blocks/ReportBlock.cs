using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Blocks;

/// <summary>A block in the look of the reports: it carries the style sheet and may hold other blocks.</summary>
public abstract class ReportBlock : Block
{
    /// <inheritdoc/>
    public sealed override string ToHtml()
    {
        var html = new Markup().Raw(Sheet.StyleElement).Raw("<div class=\"rb\">");
        WriteHtml(html);
        return html.Raw("</div>").ToString();
    }

    /// <summary>Writes the content, without the sheet and the frame that <see cref="ToHtml"/> puts round it.</summary>
    /// <param name="html">Where it is written.</param>
    public abstract void WriteHtml(Markup html);

    /// <summary>Writes any block inside another one.</summary>
    /// <param name="html">Where it is written.</param>
    /// <param name="block">The inner block.</param>
    protected static void WriteInner(Markup html, Block block)
    {
        ArgumentNullException.ThrowIfNull(block);
        if (block is ReportBlock report) report.WriteHtml(html);
        else html.Raw(block.ToHtml());
    }

    /// <summary>The texts of several blocks with an empty line between.</summary>
    /// <param name="parts">Texts; blank ones are left out.</param>
    protected static string Join(params IEnumerable<string> parts)
        => string.Join("\n\n", parts.Where(p => !string.IsNullOrWhiteSpace(p)).Select(p => p.TrimEnd()));
}
