using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts.Live;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.Charts;

/// <summary>Small line charts over the testing days, side by side.</summary>
public sealed class TrendPlot : ReportBlock
{
    private readonly IReadOnlyList<TrendPanel> _panels;

    /// <summary>Panels side by side; below each other in a narrow place.</summary>
    /// <param name="panels">At least one.</param>
    public TrendPlot(params IEnumerable<TrendPanel> panels)
    {
        _panels = [.. panels];
        if (_panels.Count == 0) throw new ArgumentException("A trend plot needs at least one panel.", nameof(panels));
    }

    /// <inheritdoc/>
    public override void WriteHtml(Markup html) => SmallCharts.Write(html, _panels);

    /// <inheritdoc/>
    public override string ToText() => Join(_panels.Select(p => p.ToText()));
}

/// <summary>One quantity over the testing days.</summary>
public sealed class TrendPanel : FigureBlock
{
    private const double NarrowestPlot = 250;

    /// <summary>The vertical axis, with unit and direction.</summary>
    public required Axis Axis { get; init; }

    /// <summary>The lines; the first five are told apart by colour, dash and mark.</summary>
    public required IReadOnlyList<TrendLine> Lines { get; init; }

    /// <summary>Thin lines behind, one for each player, without names; none by default. They are not in the table of numbers.</summary>
    public IReadOnlyList<IReadOnlyList<TrendPoint>> Behind { get; init; } = [];

    /// <summary>A named window; null for none.</summary>
    public Window? Window { get; init; }

    /// <summary>Height of the drawing in pixels.</summary>
    public int Height { get; init; } = 150;

    /// <inheritdoc/>
    public override DataTable Numbers => DataTable.Of(Title, Lines.SelectMany(l => l.Points.Select(p => (Line: l.Name, Point: p))), t => t
        .Text("Line", r => r.Line)
        .Text("Day", r => r.Point.Day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture))
        .Number("Value", Axis.Unit, Axis.Decimals, r => r.Point.Value)
        .Numeric("95\u2009% interval", Axis.Unit, r => Figures.Limits(r.Point.Low, r.Point.High, Axis.Decimals).Trim('(', ')')));

    internal AxisTicks DayTicks => AxisTicks.OfDays(Lines.SelectMany(l => l.Points).Concat(Behind.SelectMany(b => b)).Select(p => p.Day), NarrowestPlot);

    internal AxisTicks UpTicks => AxisTicks.Of(LinearScale.Over(
        Lines.SelectMany(l => l.Points.SelectMany(p => new[] { p.Value, p.Low ?? p.Value, p.High ?? p.Value })).Concat(Behind.SelectMany(b => b.Select(p => p.Value))).Concat(Window is null ? [] : [Window.Low, Window.High]),
        double.PositiveInfinity, air: 0.1, mostTicks: 5));

    /// <inheritdoc/>
    protected override void WriteKey(Markup html)
    {
        if (Lines.Count > 1) SeriesLook.WriteKey(html, Lines.Select((l, i) => SeriesLook.Key(i, l.Name, line: true, mark: true)));
    }

    /// <inheritdoc/>
    protected override void WriteDrawing(Markup html)
    {
        var drawing = new XyDrawing(new Axis(string.Empty, string.Empty), DayTicks, Axis, UpTicks, Height);
        if (Window is not null) drawing.Window(Window);
        drawing.Faint(Behind.Select(b => b.Select(p => ((double)p.Day.DayNumber, p.Value))));
        for (var i = 0; i < Lines.Count; i++) Draw(drawing, Lines[i].Points, SeriesLook.Index(i));
        drawing.Write(html, Title);
    }

    private protected override PlotFigure Live() => TrendFigure.Of(this);

    private static void Draw(XyDrawing drawing, IReadOnlyList<TrendPoint> points, int series)
    {
        drawing.Line(points.Select(p => ((double)p.Day.DayNumber, p.Value)), series);
        foreach (var point in points.Where(p => LinearScale.CanDraw(p.Value)))
        {
            if (point.Low is { } low && point.High is { } high && XyDrawing.CanDraw(low, high)) drawing.Span(point.Day.DayNumber, low, high, series);
            drawing.Mark(point.Day.DayNumber, point.Value, series);
        }
    }
}
