using Analytics.Notebooks.Look;
using static Analytics.Notebooks.Charts.Live.PlotFigure;

namespace Analytics.Notebooks.Charts.Live;

/// <summary>The live form of a <see cref="StripPanel"/>.</summary>
internal static class StripPanelFigure
{
    public static PlotFigure Of(StripPanel panel, int rowPixels, double stripPixels)
    {
        var groups = panel.Groups;
        var strip = new StripFigure(panel.Scale, panel.Axis with { Quantity = string.Empty }, [.. groups.Select(g => g.Name)], rowPixels, null, 16, 0.83);
        var dots = groups.SelectMany((g, row) => Placed(g, row, panel.Scale, rowPixels, stripPixels)).ToArray();
        return strip
            .Marks(dots.Select(d => (double?)d.Dot.Value), dots.Select(d => (double?)d.Y), Node(("size", 7L), ("color", Palette.Blue), ("opacity", 0.5)), "%{text}: " + strip.Pointed,
                ("text", dots.Select(d => PlotText.Label(d.Dot.Name)).ToArray()))
            .Marks(groups.Select(g => g.MiddleBefore), Rows(groups.Count, -0.43), Node(("size", 7L), ("color", "#ffffff"), ("line", Node(("width", 1.4), ("color", Palette.Grey)))), "middle before: " + strip.Pointed)
            .Marks(groups.Select(g => g.Middle), Rows(groups.Count, 0), Node(("symbol", "line-ns"), ("size", 12L), ("line", Node(("width", 2.6), ("color", Palette.Ink)))), "middle today: " + strip.Pointed)
            .Head(100, "middle", above: 20)
            .Column(100, [.. Enumerable.Range(0, groups.Count)], groups.Select(g => Figures.Plain(g.Middle, panel.Axis.Decimals)).ToArray(), Palette.Ink)
            .Figure;
    }

    private static IEnumerable<double?> Rows(int count, double shift) => Enumerable.Range(0, count).Select(i => (double?)(i + shift));

    private static IEnumerable<(StripDot Dot, double Y)> Placed(StripGroup group, int row, LinearScale scale, int rowPixels, double stripPixels)
    {
        var dots = group.Dots.Where(d => LinearScale.CanDraw(d.Value)).ToArray();
        var offsets = Swarm.Offsets([.. dots.Select(d => scale.Percent(d.Value) * stripPixels / 100)], 7, 8);
        return dots.Select((d, i) => (d, row + (offsets[i] / rowPixels)));
    }
}
