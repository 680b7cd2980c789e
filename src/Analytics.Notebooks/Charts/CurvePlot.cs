using Analytics.Notebooks.Charts.Live;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.Charts;

/// <summary>Curves with their bands and the points they were made from, for example speed over distance.</summary>
public sealed class CurvePlot : FigureBlock
{
    internal const double NarrowestPlot = 270;

    /// <summary>The horizontal axis.</summary>
    public required Axis Across { get; init; }

    /// <summary>The vertical axis.</summary>
    public required Axis Up { get; init; }

    /// <summary>The curves; the first five are told apart by colour and dash.</summary>
    public required IReadOnlyList<Curve> Curves { get; init; }

    /// <summary>A named window of the vertical axis; null for none.</summary>
    public Window? Window { get; init; }

    /// <summary>Height of the drawing in pixels.</summary>
    public int Height { get; init; } = 260;

    /// <inheritdoc/>
    public override DataTable Numbers => DataTable.Of(Title, CurveRows.Of(Curves, AcrossTicks.Scale.Ticks), t => t
        .Text("Curve", r => r.Name)
        .Number(Across.Quantity, Across.Unit, Math.Max(Across.Decimals, AcrossTicks.Scale.Decimals), r => r.X)
        .Number(Up.Quantity, Up.Unit, Up.Decimals, r => r.Y)
        .Numeric("95\u2009% interval", Up.Unit, r => Figures.Limits(r.Low, r.High, Up.Decimals).Trim('(', ')'))
        .Text("Point", r => r.Measured ? "measured" : "on the curve"));

    internal AxisTicks AcrossTicks => AxisTicks.Of(LinearScale.Over(
        Curves.SelectMany(c => c.Line.Select(p => p.X).Concat(c.Points.Select(p => p.X))), NarrowestPlot, air: 0.02));

    internal AxisTicks UpTicks => AxisTicks.Of(LinearScale.Over(
        Curves.SelectMany(c => c.Line.Select(p => p.Y).Concat(c.Band.SelectMany(b => new[] { b.Low, b.High })).Concat(c.Points.SelectMany(p => new[] { p.Y, p.Low ?? p.Y, p.High ?? p.Y })))
            .Concat(Window is null ? [] : [Window.Low, Window.High]), double.PositiveInfinity));

    /// <inheritdoc/>
    protected override void WriteKey(Markup html)
    {
        if (Curves.Count > 1) SeriesLook.WriteKey(html, Curves.Select((c, i) => SeriesLook.Key(i, c.Name, c.Line.Count > 0, c.Points.Count > 0)));
    }

    /// <inheritdoc/>
    protected override void WriteDrawing(Markup html)
    {
        var drawing = new XyDrawing(Across, AcrossTicks, Up, UpTicks, Height);
        if (Window is not null) drawing.Window(Window);
        for (var i = 0; i < Curves.Count; i++) Draw(drawing, Curves[i], SeriesLook.Index(i));
        drawing.Write(html, Title);
    }

    private protected override PlotFigure Live() => CurveFigure.Of(this);

    private static void Draw(XyDrawing drawing, Curve curve, int series)
    {
        if (curve.Band.Count > 0) drawing.Band(curve.Band, series);
        if (curve.Line.Count > 0) drawing.Line(curve.Line, series);
        foreach (var point in curve.Points.Where(p => XyDrawing.CanDraw(p.X, p.Y)))
        {
            if (point.Low is { } low && point.High is { } high && XyDrawing.CanDraw(low, high)) drawing.Span(point.X, low, high, series);
            drawing.Mark(point.X, point.Y, series);
        }
    }
}
