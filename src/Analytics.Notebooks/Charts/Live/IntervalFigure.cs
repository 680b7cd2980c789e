using Analytics.Notebooks.Look;
using static Analytics.Notebooks.Charts.Live.PlotFigure;

namespace Analytics.Notebooks.Charts.Live;

/// <summary>The live form of an <see cref="IntervalPlot"/>.</summary>
internal static class IntervalFigure
{
    public static PlotFigure Of(IntervalPlot plot, int rowPixels)
    {
        var (rows, axis) = (plot.Rows, plot.Axis);
        var repetitions = rows.SelectMany((r, y) => r.Repetitions.Select(x => (X: x, Y: y))).ToArray();
        var strip = new StripFigure(plot.Scale, axis, [.. rows.Select(r => r.Name)], rowPixels, plot.Window, PlotText.LongestLabel, 0.54);
        if (repetitions.Length > 0)
            strip.Marks(repetitions.Select(r => (double?)r.X), repetitions.Select(r => (double?)(r.Y + 0.23)), Node(("size", 7L), ("color", Palette.Blue), ("opacity", 0.5)), "one repetition: " + strip.Pointed);
        strip.Marks(
            rows.Select(r => r.Value), rows.Select((_, y) => (double?)(y - 0.13)), Node(("symbol", "line-ns"), ("size", 8L), ("line", Node(("width", 2.6), ("color", Palette.Ink)))), "%{text}: " + strip.Pointed,
            ("text", rows.Select(r => PlotText.Label(r.Name)).ToArray()), ("error_x", Node(
                ("type", "data"), ("symmetric", false), ("array", PlotText.Numbers(rows.Select(r => r.High - r.Value), axis.Decimals + 1)), ("arrayminus", PlotText.Numbers(rows.Select(r => r.Value - r.Low), axis.Decimals + 1)),
                ("width", 0L), ("thickness", 2L), ("color", Palette.Ink))));
        foreach (var tone in rows.Select((r, y) => (Row: r, Y: y)).Where(r => r.Row.Words.Length > 0).GroupBy(r => r.Row.Tone))
            strip.Column(100, [.. tone.Select(r => r.Y)], tone.Select(r => PlotText.Escape(r.Row.Words)).ToArray(), tone.Key switch { Tone.Gain => Palette.Blue, Tone.Loss => Palette.OrangeText, _ => Palette.Muted });
        return strip.Column(57, [.. Enumerable.Range(0, rows.Count)], rows.Select(r => $"{Figures.Plain(r.Value, axis.Decimals, PlotText.Escape(axis.Unit))} {Figures.Limits(r.Low, r.High, axis.Decimals)}").ToArray(), Palette.Ink).Figure;
    }
}
