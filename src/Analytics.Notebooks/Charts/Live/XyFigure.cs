using Analytics.Notebooks.Look;
using static Analytics.Notebooks.Charts.Live.PlotFigure;

namespace Analytics.Notebooks.Charts.Live;

/// <summary>The live form of a chart with two axes, on the same scales as its drawing.</summary>
internal sealed class XyFigure
{
    private readonly Axis _across;
    private readonly Axis _up;

    public XyFigure(Axis across, AxisTicks acrossTicks, Axis up, AxisTicks upTicks, int height)
    {
        (_across, _up) = (across, up);
        Figure = new PlotFigure(height + 76, PlotText.Margin(upTicks.Labels.Select(l => l.Text), 12), 12, 28, across.Title.Length == 0 ? 30 : 48);
        Figure.Layout("xaxis", PlotFigure.Axis(acrossTicks, Words(across, across.Arrow), 8));
        Figure.Layout("yaxis", PlotFigure.Axis(upTicks, string.Empty, 0));
        Figure.Layout("annotations", new[]
        {
            Node(("text", Words(up, up.Better switch { Better.Higher => "\u2191 better", Better.Lower => "\u2193 better", _ => string.Empty })), ("xref", "paper"), ("x", 0L), ("xanchor", "left"), ("yref", "paper"), ("y", 1L),
                ("yanchor", "bottom"), ("yshift", 6L), ("showarrow", false), ("font", Font(13, Palette.Muted))),
        });
    }

    public PlotFigure Figure { get; }

    public string Pointed => $"%{{x}}{PlotText.Escape(Figures.Unit(_across.Unit))}, %{{y:.{_up.Decimals}f}}{PlotText.Escape(Figures.Unit(_up.Unit))}<extra></extra>";

    public void Window(Window window) => Figure.Layout("shapes", new[]
    {
        Node(("type", "rect"), ("layer", "below"), ("xref", "paper"), ("x0", 0L), ("x1", 1L), ("y0", window.Low), ("y1", window.High), ("fillcolor", Palette.Band), ("line", Node(("width", 0L))), ("label",
            Node(("text", PlotText.Escape(window.Label)), ("textposition", "top left"), ("font", Font(12, Palette.Muted))))),
    });

    public void Band(IReadOnlyList<(double X, double Low, double High)> band, int series)
    {
        var edge = band.Select(b => (b.X, Y: b.High)).Concat(band.Reverse().Select(b => (b.X, Y: b.Low))).ToArray();
        Figure.Scatter(("mode", "lines"), ("x", X(edge.Select(e => e.X))), ("y", Y(edge.Select(e => e.Y))), ("fill", "toself"), ("fillcolor", SeriesLook.Colour(series) + "26"), ("line", Node(("width", 0L))), ("hoverinfo", "skip"));
    }

    /// <summary>Thin lines without names, one trace: an empty place parts them.</summary>
    public void Faint(IEnumerable<IEnumerable<(double X, double Y)>> lines)
    {
        double?[][] Places(Func<(double X, double Y), double?> place) => [.. lines.Select(l => l.Select(place).ToArray()).Where(l => l.Length > 1)];
        IEnumerable<double?> Parted(double?[][] places) => places.SelectMany(l => l.Append(null));
        Figure.Scatter(
            ("mode", "lines"), ("x", PlotText.Numbers(Parted(Places(p => p.X)), _across.Decimals)), ("y", Y(Parted(Places(p => p.Y)))),
            ("line", Node(("color", Palette.Grey + "59"), ("width", 1L))), ("hoverinfo", "skip"));
    }

    public void Line(string name, IReadOnlyList<(double X, double Y)> line, int series) => Figure.Scatter(
        ("mode", "lines"), ("x", X(line.Select(p => p.X))), ("y", Y(line.Select(p => p.Y))), ("line", Node(("color", SeriesLook.Colour(series)), ("width", 2L), ("dash", series == 0 ? null : SeriesLook.Dash(series)))),
        ("hovertemplate", PlotText.Label(name) + ": " + Pointed));

    public void Points(string name, IReadOnlyList<XyPoint> points, int series) => Figure.Scatter(
        ("mode", "markers"), ("x", X(points.Select(p => p.X))), ("y", Y(points.Select(p => p.Y))), ("marker", Marker(series)), ("cliponaxis", false), ("hovertemplate", PlotText.Label(name) + ": " + Pointed),
        ("error_y", points.All(p => p.Low is null) ? null : Node(
            ("type", "data"), ("symmetric", false), ("array", Y(points.Select(p => p.High - p.Y))), ("arrayminus", Y(points.Select(p => p.Y - p.Low))), ("width", 0L), ("thickness", 1.6), ("color", SeriesLook.Colour(series)))));

    public static Dictionary<string, object> Marker(int series)
        => Node(("color", SeriesLook.Colour(series)), ("size", 8L), ("opacity", 0.75), ("symbol", series == 0 ? null : SeriesLook.Symbol(series)));

    public object?[] X(IEnumerable<double> values) => PlotText.Numbers(values.Select(v => (double?)v), _across.Decimals + 2);

    public object?[] Y(IEnumerable<double?> values) => PlotText.Numbers(values, _up.Decimals + 1);

    public object?[] Y(IEnumerable<double> values) => Y(values.Select(v => (double?)v));

    private static string Words(Axis axis, string arrow)
        => arrow.Length == 0 ? PlotText.Escape(axis.Title) : $"{PlotText.Escape(axis.Title)}    <b>{arrow}</b>";
}
