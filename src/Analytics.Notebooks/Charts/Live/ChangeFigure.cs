using Analytics.Notebooks.Look;
using static Analytics.Notebooks.Charts.Live.PlotFigure;

namespace Analytics.Notebooks.Charts.Live;

/// <summary>The live form of a <see cref="ChangePlot"/>.</summary>
internal static class ChangeFigure
{
    public static PlotFigure Of(ChangePlot plot, int rowPixels)
    {
        var (rows, axis) = (plot.Shown, plot.Axis);
        var strip = new StripFigure(plot.Scale, axis, [.. rows.Select(r => r.Name)], rowPixels, plot.Window, PlotText.LongestLabel, 0.54).Zero();
        foreach (var kind in rows.Select((row, y) => (Row: row, Y: y)).GroupBy(r => (r.Row.Tone, Mark(r.Row))).OrderBy(g => g.First().Y))
            strip.Marks(
                kind.Select(r => (double?)r.Row.Change), kind.Select(r => (double?)r.Y), Marker(kind.First().Row), "%{y}: " + strip.Pointed,
                ("error_x", Spans([.. kind.Select(r => r.Row)], axis.Decimals + 1)));
        foreach (var words in rows.Select((row, y) => (Row: row, Y: y)).GroupBy(r => r.Row.Words))
        {
            var first = words.First().Row;
            strip.Column(100, [.. words.Select(w => w.Y)], first.IsClear ? $"<b>{words.Key}</b>" : words.Key, Colour(first.Tone, Palette.OrangeText, Palette.Muted));
        }
        return strip.Head(57, ChangePlot.NumbersHead).Head(100, ChangePlot.WordsHead).Column(57, [.. Enumerable.Range(0, rows.Count)], rows.Select(r => Beside(r, axis)).ToArray(), Palette.Ink).Figure;
    }

    private static string Beside(ChangeRow row, Axis axis)
        => row.Shown.Length > 0 ? PlotText.Escape(row.Shown) : $"{Figures.Signed(row.Change, axis.Decimals, PlotText.Escape(axis.Unit))} {Figures.Limits(row.Low, row.High, axis.Decimals, signed: true)}";

    private static string Mark(ChangeRow row) => row.IsClear ? "diamond" : row.Verdict is ChangeVerdict.TooSmallToMatter ? "circle" : "circle-open";

    private static string Colour(Tone tone, string loss, string rest) => tone switch { Tone.Gain => Palette.Blue, Tone.Loss => loss, _ => rest };

    private static Dictionary<string, object> Marker(ChangeRow row) => Mark(row) switch
    {
        "diamond" => Node(("symbol", "diamond"), ("size", 10L), ("color", Colour(row.Tone, Palette.Orange, Palette.Ink))),
        "circle" => Node(("size", 6L), ("color", Palette.Grey)),
        _ => Node(("size", 9L), ("color", "#ffffff"), ("line", Node(("width", 2L), ("color", Palette.Grey)))),
    };

    private static Dictionary<string, object> Spans(IReadOnlyList<ChangeRow> rows, int decimals) => Node(
        ("type", "data"), ("symmetric", false), ("array", PlotText.Numbers(rows.Select(r => r.High - r.Change), decimals)), ("arrayminus", PlotText.Numbers(rows.Select(r => r.Change - r.Low), decimals)),
        ("width", 0L), ("thickness", 2L), ("color", Colour(rows[0].Tone, Palette.Orange, rows[0].IsClear ? Palette.Ink : Palette.Grey)));
}
