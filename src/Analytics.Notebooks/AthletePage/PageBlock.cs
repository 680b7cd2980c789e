using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.AthletePage;

/// <summary>A block in the closer setting of the athlete page, which has one sheet of paper.</summary>
internal sealed class PageBlock(ReportBlock inner) : ReportBlock
{
    private static readonly string s_style = "<style data-once=\"athlete-page\">" + Sheet.Compacted("athlete-page.css") + "</style>";

    public override void WriteHtml(Markup html)
    {
        html.Raw(s_style).Raw("<div class=\"ap\">");
        WriteInner(html, inner);
        html.Raw("</div>");
    }

    public override string ToText() => inner.ToText();
}

/// <summary>Markup and the same content as text, for the small parts only this page has.</summary>
internal sealed class Written(Action<Markup> write, string text) : ReportBlock
{
    public override void WriteHtml(Markup html) => write(html);

    public override string ToText() => text;
}
