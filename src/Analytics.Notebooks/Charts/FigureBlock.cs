using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts.Live;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.Charts;

/// <summary>
/// A chart: a drawing that needs no script, the same chart as data for a page that can draw it live, and the
/// numbers as a table.
/// </summary>
public abstract class FigureBlock : ReportBlock
{
    /// <summary>Title: the question or the quantity.</summary>
    public required string Title { get; init; }

    /// <summary>A short remark beside the title, for example the timing method; may be empty.</summary>
    public string TitleNote { get; init; } = string.Empty;

    /// <summary>A remark under the chart; may be empty.</summary>
    public string Remark { get; init; } = string.Empty;

    /// <summary>Whether the chart stays a still picture, as small ones do that are folded away: a page of them would else be heavy.</summary>
    public bool Still { get; init; }

    /// <summary>The numbers of the chart as a table.</summary>
    public abstract DataTable Numbers { get; }

    /// <inheritdoc/>
    public sealed override void WriteHtml(Markup html)
    {
        var drawing = new Markup();
        WriteDrawing(drawing);
        var id = StableId.Of("fig", Title + "\n" + drawing);
        html.Add($"<figure class=\"fig\" aria-labelledby=\"{id}\" data-live-min=\"{NarrowestLive}\"><figcaption id=\"{id}\">{Title}");
        if (TitleNote.Length > 0) html.Add($" <small>{TitleNote}</small>");
        html.Raw("</figcaption>");
        WriteKey(html);
        html.Add($"<div class=\"fig-static\">{drawing}</div>");
        if (!Still) html.Raw("<div class=\"fig-live\" hidden=\"\"></div><script type=\"application/json\" class=\"fig-data\">").Raw(Live().Json).Raw("</script>");
        html.Raw("<details class=\"fig-table\"><summary>Numbers as a table</summary>");
        NumbersShown.WriteHtml(html);
        html.Raw("</details>");
        WriteMore(html);
        if (Remark.Length > 0) html.Add($"<p class=\"nt\">{Remark}</p>");
        html.Raw("</figure>");
    }

    /// <summary>The chart as a Plotly.NET object, for a notebook that wants to change it.</summary>
    public Plotly.NET.GenericChart ToPlotly() => Live().Chart;

    /// <inheritdoc/>
    public sealed override string ToText() => Join(Numbers.ToText(), Remark);

    /// <summary>Writes the key, which stays whether the chart is live or not.</summary>
    /// <param name="html">Where it is written.</param>
    protected virtual void WriteKey(Markup html)
    {
    }

    /// <summary>Writes the drawing that needs no script.</summary>
    /// <param name="html">Where it is written.</param>
    protected abstract void WriteDrawing(Markup html);

    // Below this width of the window, in pixels, the drawing reads better than a live chart.
    private protected virtual int NarrowestLive => 640;

    /// <summary>The numbers that the chart shows; a chart that folds rows away shows those as a table anyhow.</summary>
    private protected virtual DataTable NumbersShown => Numbers;

    private protected abstract PlotFigure Live();

    /// <summary>Writes what follows the chart whether it is live or not.</summary>
    /// <param name="html">Where it is written.</param>
    protected virtual void WriteMore(Markup html)
    {
    }
}
