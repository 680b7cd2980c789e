using Analytics.Notebooks.Look;
using static Analytics.Notebooks.Charts.Live.PlotFigure;

namespace Analytics.Notebooks.Charts.Live;

/// <summary>The live form of a <see cref="CurvePlot"/>.</summary>
internal static class CurveFigure
{
    public static PlotFigure Of(CurvePlot plot)
    {
        var live = new XyFigure(plot.Across, plot.AcrossTicks, plot.Up, plot.UpTicks, plot.Height);
        if (plot.Window is not null) live.Window(plot.Window);
        for (var i = 0; i < plot.Curves.Count; i++)
        {
            var (curve, series) = (plot.Curves[i], SeriesLook.Index(i));
            if (curve.Band.Count > 0) live.Band(curve.Band, series);
            if (curve.Line.Count > 0) live.Line(curve.Name, curve.Line, series);
            if (curve.Points.Count > 0) live.Points(curve.Name, curve.Points, series);
        }
        return live.Figure;
    }
}

/// <summary>The live form of a <see cref="TrendPanel"/>.</summary>
internal static class TrendFigure
{
    public static PlotFigure Of(TrendPanel panel)
    {
        var live = new XyFigure(new Axis(string.Empty, string.Empty), panel.DayTicks, panel.Axis, panel.UpTicks, panel.Height);
        if (panel.Window is not null) live.Window(panel.Window);
        if (panel.Behind.Count > 0) live.Faint(panel.Behind.Select(b => b.Select(p => ((double)p.Day.DayNumber, p.Value))));
        for (var i = 0; i < panel.Lines.Count; i++)
        {
            var (line, series) = (panel.Lines[i], SeriesLook.Index(i));
            live.Line(line.Name, [.. line.Points.Select(p => ((double)p.Day.DayNumber, p.Value))], series);
            live.Points(line.Name, [.. line.Points.Select(p => new XyPoint(p.Day.DayNumber, p.Value, p.Low, p.High))], series);
        }
        return live.Figure;
    }
}

/// <summary>The live form of a <see cref="ScatterPlot"/>.</summary>
internal static class ScatterFigure
{
    public static PlotFigure Of(ScatterPlot plot)
    {
        var live = new XyFigure(plot.Across, plot.AcrossTicks, plot.Up, plot.UpTicks, plot.Height);
        foreach (var reference in plot.References) WriteReference(live, reference, plot.End(reference));
        foreach (var group in plot.Points.GroupBy(p => plot.Series(p.Group)).OrderBy(g => g.Key))
            live.Figure.Scatter(
                ("mode", "markers"), ("x", live.X(group.Select(p => p.X))), ("y", live.Y(group.Select(p => p.Y))), ("marker", XyFigure.Marker(group.Key)), ("cliponaxis", false), ("text", group.Select(p => PlotText.Label(p.Name)).ToArray()),
                ("hovertemplate", "%{text}: " + live.Pointed));
        WriteNames(live, plot);
        return live.Figure;
    }

    private static void WriteReference(XyFigure live, Curve reference, (double X, double Y)? end)
    {
        live.Figure.Scatter(
            ("mode", "lines"), ("x", live.X(reference.Line.Select(p => p.X))), ("y", live.Y(reference.Line.Select(p => p.Y))),
            ("line", Node(("color", Palette.Grey), ("width", 1L), ("dash", "dot"))), ("hovertemplate", PlotText.Escape(reference.Name) + "<extra></extra>"));
        if (end is { } at) WriteText(live, [(at.X, at.Y)], [PlotText.Label(reference.Name)], "top left", Palette.Muted);
    }

    private static void WriteNames(XyFigure live, ScatterPlot plot)
    {
        var (drawn, labels) = (plot.Drawn.ToArray(), plot.Labels);
        if (labels.Count == 0) return;
        WriteText(live, [.. labels.Select(l => (drawn[l.Mark].X, drawn[l.Mark].Y))], labels.Select(l => PlotText.Escape(ScatterPlot.Short(drawn[l.Mark].Name))).ToArray(),
            labels.Select(l => l.Side switch { Side.Right => "middle right", Side.Left => "middle left", Side.Above => "top center", _ => "bottom center" }).ToArray(), Palette.Ink);
    }

    // Plotly keeps text clear of a mark only when the trace has one; this one is not seen.
    private static void WriteText(XyFigure live, IReadOnlyList<(double X, double Y)> places, string[] text, object position, string colour) => live.Figure.Scatter(
        ("mode", "markers+text"), ("marker", Node(("size", 12L), ("opacity", 0L))), ("x", live.X(places.Select(p => p.X))), ("y", live.Y(places.Select(p => p.Y))), ("text", text), ("textposition", position),
        ("textfont", Node(("size", 12L), ("color", colour))), ("hoverinfo", "skip"), ("cliponaxis", false));
}
