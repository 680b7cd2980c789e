using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>Small charts side by side, as many as the width holds.</summary>
internal static class SmallCharts
{
    /// <summary>Writes the charts: three in a row at most, two where three would leave one alone.</summary>
    public static void Write(Markup html, IReadOnlyList<ReportBlock> charts)
    {
        html.Raw(charts.Count is 2 or 4 ? "<div class=\"sm two\">" : "<div class=\"sm\">");
        foreach (var chart in charts) chart.WriteHtml(html);
        html.Raw("</div>");
    }
}
