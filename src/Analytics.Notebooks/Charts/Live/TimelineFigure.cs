using Analytics.Notebooks.Look;
using static Analytics.Notebooks.Charts.Live.PlotFigure;

namespace Analytics.Notebooks.Charts.Live;

/// <summary>The live form of a <see cref="TimelinePlot"/>.</summary>
internal static class TimelineFigure
{
    public static PlotFigure Of(TimelinePlot plot, int rowPixels)
    {
        var (rows, axis) = (plot.Rows, plot.Axis);
        var strip = new StripFigure(plot.Scale, axis, [.. rows.Select(r => r.Label)], rowPixels, plot.Window, PlotText.LongestLabel, 0.54);
        double?[] lines = [.. rows.SelectMany((_, y) => new double?[] { y, y, null })];
        strip.Figure.Scatter(
            ("mode", "lines"), ("x", PlotText.Numbers(rows.SelectMany(r => new double?[] { 0, r.End, null }), axis.Decimals + 1)), ("y", PlotText.Numbers(lines, 0)),
            ("line", Node(("width", 1L), ("color", Palette.Grey))), ("hoverinfo", "skip"));
        strip.Marks(rows.Select(_ => (double?)0), Ys(rows), Node(("symbol", "line-ns"), ("size", 7L), ("line", Node(("width", 2.6), ("color", Palette.Ink)))), PlotText.Escape(plot.StartName) + "<extra></extra>");
        var between = rows.SelectMany((r, y) => r.Marks.Select(m => (Mark: m, Y: y))).ToArray();
        if (between.Length > 0)
            strip.Marks(between.Select(m => (double?)m.Mark.At), between.Select(m => (double?)m.Y), Node(("size", 7L), ("color", "#ffffff"), ("line", Node(("width", 1.4), ("color", Palette.Grey)))), "%{text}: " + strip.Pointed,
                ("text", between.Select(m => PlotText.Label(m.Mark.Name)).ToArray()));
        strip.Marks(rows.Select(r => (double?)r.End), Ys(rows), Node(("size", 8L), ("color", Palette.Blue), ("opacity", 0.7)), "%{text}: " + strip.Pointed,
            ("text", rows.Select(r => PlotText.Label(r.Label)).ToArray()), ("error_x", Node(
                ("type", "data"), ("symmetric", false), ("array", PlotText.Numbers(rows.Select(r => r.High - r.End), axis.Decimals + 1)), ("arrayminus", PlotText.Numbers(rows.Select(r => r.End - r.Low), axis.Decimals + 1)),
                ("width", 0L), ("thickness", 2L), ("color", Palette.Ink))));
        strip.Column(100, [.. Enumerable.Range(0, rows.Count)], rows.Select(r => PlotText.Escape(r.Words)).ToArray(), Palette.Muted);
        return strip.Column(57, [.. Enumerable.Range(0, rows.Count)], rows.Select(r => $"{Figures.Plain(r.End, axis.Decimals, PlotText.Escape(axis.Unit))} {Figures.Limits(r.Low, r.High, axis.Decimals)}").ToArray(), Palette.Ink).Figure;
    }

    private static IEnumerable<double?> Ys(IReadOnlyList<TimelineRow> rows) => Enumerable.Range(0, rows.Count).Select(y => (double?)y);
}
