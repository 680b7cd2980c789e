using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>
/// A chart with two axes that needs no script. Across, places are percent of the width, so words keep their size on
/// any screen; curves are stretched with the width, their line weight is not.
/// </summary>
internal sealed class XyDrawing(Axis acrossAxis, AxisTicks across, Axis upAxis, AxisTicks up, int height)
{
    private const double Units = 1000;
    private readonly Markup _behind = new();
    private readonly Markup _marks = new();

    /// <summary>Place across, in percent.</summary>
    public double X(double value) => across.Scale.Percent(value);

    /// <summary>Place down from the top, in pixels.</summary>
    public double Y(double value) => height - (up.Scale.Percent(value) / 100 * height);

    public static bool CanDraw(double x, double y) => LinearScale.CanDraw(x) && LinearScale.CanDraw(y);

    public void Window(Window window)
    {
        var (top, bottom) = (Math.Max(0, Y(window.High)), Math.Min(height, Y(window.Low)));
        _behind.Add($"<rect class=\"b\" y=\"{top}\" width=\"100%\" height=\"{Math.Max(0, bottom - top)}\"/>");
        _marks.Add($"<text class=\"t lb\" x=\"4\" y=\"{top + 13}\">{window.Label}</text>");
    }

    public void Band(IReadOnlyList<(double X, double Low, double High)> band, int series)
    {
        var edge = band.Select(b => (b.X, Y: b.High)).Concat(band.Reverse().Select(b => (b.X, Y: b.Low)));
        _behind.Add(Stretched(new Markup().Add($"<polygon class=\"f{series}\" points=\"{Path(edge)}\"/>")));
    }

    /// <summary>Thin lines behind everything else, as one shape: a squad would else be sixty.</summary>
    public void Faint(IEnumerable<IEnumerable<(double X, double Y)>> lines)
    {
        var path = new Markup();
        foreach (var line in lines.Select(l => l.Where(p => CanDraw(p.X, p.Y)).ToArray()).Where(l => l.Length > 1)) path.Add($"M{Path(line)}");
        if (path.ToString().Length > 0) _behind.Add(Stretched(new Markup().Add($"<path class=\"bh\" d=\"{path}\"/>")));
    }

    public void Line(IEnumerable<(double X, double Y)> line, int series)
        => _marks.Add(Stretched(new Markup().Add($"<polyline class=\"c{series}\" points=\"{Path(line)}\"/>")));

    public void Span(double x, double low, double high, int series)
        => _marks.Add($"<line class=\"c{series} e\" x1=\"{X(x)}%\" x2=\"{X(x)}%\" y1=\"{Y(low)}\" y2=\"{Y(high)}\"/>");

    public void Mark(double x, double y, int series)
        => _marks.Add($"<svg x=\"{X(x)}%\" y=\"{Y(y)}\"><path class=\"p{series}\" d=\"{SeriesLook.Shape(series)}\"/></svg>");

    public void Words(string text, double percent, double y, string classes)
        => _marks.Add($"<text class=\"{classes}\" x=\"{percent}%\" y=\"{y}\">{text}</text>");

    public void Name(string name, double x, double y, LabelPlace place)
    {
        var (dx, dy, anchor) = place.Side switch { Side.Right => (8, 4, string.Empty), Side.Left => (-8, 4, " end"), Side.Above => (0, -8, " mid"), _ => (0, 17, " mid") };
        _marks.Add($"<text class=\"lb{anchor}{(place.Everywhere ? string.Empty : " wide")}\" x=\"{X(x)}%\" dx=\"{dx}\" y=\"{Y(y) + dy}\">{name}</text>");
    }

    public void Write(Markup html, string title)
    {
        var gutter = up.Labels.Select(l => TextWidth.Of(l.Text, 12)).DefaultIfEmpty(0).Max() + 8;
        html.Add($"<div class=\"xy\"><p class=\"ax\"><span>{upAxis.Title}</span>{Arrow(upAxis.Better switch { Better.Higher => "\u2191 better", Better.Lower => "\u2193 better", _ => string.Empty })}</p>");
        html.Add($"<div class=\"xg\"><svg width=\"{gutter}\" height=\"{height}\" aria-hidden=\"true\">");
        foreach (var (value, text) in up.Labels) html.Add($"<text class=\"t end\" x=\"{gutter - 6}\" y=\"{Y(value) + 4}\">{text}</text>");
        html.Add($"</svg><svg class=\"pl\" height=\"{height}\" role=\"img\" aria-label=\"{title}\">");
        html.Add(_behind);
        foreach (var (value, _) in up.Labels) html.Add($"<line class=\"g\" x2=\"100%\" y1=\"{Y(value)}\" y2=\"{Y(value)}\"/>");
        foreach (var (value, text) in across.Labels)
            html.Add($"<line class=\"g\" x1=\"{X(value)}%\" x2=\"{X(value)}%\" y2=\"{height}\"/><text class=\"t mid\" x=\"{X(value)}%\" y=\"{height + 17}\">{text}</text>");
        html.Add(_marks);
        html.Add($"</svg></div><p class=\"ax xt\"><span>{acrossAxis.Title}</span>{Arrow(acrossAxis.Arrow)}</p></div>");
    }

    private static Markup Arrow(string words) => words.Length == 0 ? new Markup() : new Markup().Add($"<b>{words}</b>");

    private Markup Stretched(Markup shape)
        => new Markup().Add($"<svg class=\"cv\" viewBox=\"0 0 {Units} {height}\" width=\"100%\" height=\"{height}\" preserveAspectRatio=\"none\">{shape}</svg>");

    private Markup Path(IEnumerable<(double X, double Y)> line)
    {
        var path = new Markup();
        foreach (var (x, y) in line.Where(p => CanDraw(p.X, p.Y))) path.Add($"{Math.Round(X(x) / 100 * Units)},{Y(y)} ");
        return path;
    }
}
