using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>A block in the setting of the training week, which has printed sheets.</summary>
internal class WeekBlock(ReportBlock inner) : ReportBlock
{
    private static readonly string s_style = "<style data-once=\"training-week\">" + Sheet.Compacted("training-week.css") + "</style>";

    public override void WriteHtml(Markup html)
    {
        html.Raw(s_style).Raw("<div class=\"tw\">");
        WriteInner(html, inner);
        html.Raw("</div>");
    }

    public override string ToText() => inner.ToText();
}

/// <summary>A block in a frame that its rules begin with.</summary>
internal sealed class Framed(string className, ReportBlock inner) : ReportBlock
{
    public override void WriteHtml(Markup html)
    {
        html.Add($"<div class=\"{className}\">");
        WriteInner(html, inner);
        html.Raw("</div>");
    }

    public override string ToText() => inner.ToText();
}
