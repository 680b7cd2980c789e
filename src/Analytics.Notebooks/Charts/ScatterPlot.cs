using Analytics.Notebooks.Charts.Live;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.Charts;

/// <summary>Two quantities of each player against each other, with curves to read them by.</summary>
public sealed class ScatterPlot : FigureBlock
{
    private const int LongestName = 24;

    /// <summary>The horizontal axis.</summary>
    public required Axis Across { get; init; }

    /// <summary>The vertical axis.</summary>
    public required Axis Up { get; init; }

    /// <summary>The players.</summary>
    public required IReadOnlyList<ScatterPoint> Points { get; init; }

    /// <summary>Named curves behind the points, for example lines of equal momentum; cut at the edge of the chart.</summary>
    public IReadOnlyList<Curve> References { get; init; } = [];

    /// <summary>Height of the drawing in pixels.</summary>
    public int Height { get; init; } = 340;

    /// <inheritdoc/>
    public override DataTable Numbers => DataTable.Of(Title, Points, t => t
        .Text("Player", p => p.Name)
        .Text("Group", p => p.Group)
        .Number(Across.Quantity, Across.Unit, Across.Decimals, p => p.X)
        .Number(Up.Quantity, Up.Unit, Up.Decimals, p => p.Y));

    internal AxisTicks AcrossTicks => AxisTicks.Of(LinearScale.Over(Points.Select(p => p.X), CurvePlot.NarrowestPlot));

    internal AxisTicks UpTicks => AxisTicks.Of(LinearScale.Over(Points.Select(p => p.Y), double.PositiveInfinity));

    internal IReadOnlyList<string> Groups => [.. Points.Select(p => p.Group).Where(g => g.Length > 0).Distinct()];

    // Named points among unnamed ones are landmarks, not players: ink, so that no colour with a meaning is spent on them.
    private string? Landmarks => Groups.Where(g => Points.All(p => p.Group != g || p.Labelled)).ToList() is [var one] && Groups.Count == 2 ? one : null;

    internal int Series(string group) => group.Length == 0 ? 0
        : group == Landmarks ? SeriesLook.Ink
        : SeriesLook.Index(Groups.ToList().IndexOf(group));

    internal IEnumerable<ScatterPoint> Drawn => Points.Where(p => XyDrawing.CanDraw(p.X, p.Y));

    private XyDrawing Drawing => new(Across, AcrossTicks, Up, UpTicks, Height);

    /// <summary>The names that have a place, by index into <see cref="Drawn"/>.</summary>
    internal IReadOnlyList<LabelPlace> Labels
    {
        get
        {
            var drawing = Drawing;
            return [.. LabelPlaces.Of([.. Drawn.Select(p => (drawing.X(p.X), drawing.Y(p.Y), p.Labelled ? Short(p.Name) : string.Empty))], Height, [.. NamesOfReferences.Select(n => (n.Right, n.Y, n.Name))])];
        }
    }

    /// <summary>The last place of a curve that is inside the chart: its name stands there.</summary>
    internal (double X, double Y)? End(Curve reference)
    {
        var drawing = Drawing;
        var inside = reference.Line.Where(p => drawing.X(p.X) is >= 0 and <= 100 && drawing.Y(p.Y) >= 0 && drawing.Y(p.Y) <= Height).ToArray();
        return inside.Length == 0 ? null : inside[^1];
    }

    internal static string Short(string name) => OutsideText.Cut(OutsideText.Label(name), LongestName);

    /// <inheritdoc/>
    protected override void WriteKey(Markup html)
    {
        if (Groups.Count > 1) SeriesLook.WriteKey(html, Groups.Select(g => SeriesLook.Key(Series(g), g, line: false, mark: true)));
    }

    /// <inheritdoc/>
    protected override void WriteDrawing(Markup html)
    {
        var (drawing, drawn) = (Drawing, Drawn.ToArray());
        WriteReferences(drawing);
        foreach (var point in drawn) drawing.Mark(point.X, point.Y, Series(point.Group));
        foreach (var label in Labels) drawing.Name(Short(drawn[label.Mark].Name), drawn[label.Mark].X, drawn[label.Mark].Y, label);
        drawing.Write(html, Title);
    }

    private void WriteReferences(XyDrawing drawing)
    {
        foreach (var reference in References) drawing.Line(reference.Line, SeriesLook.Most);
        foreach (var name in NamesOfReferences) drawing.Words(name.Name, name.Right, name.Y, name.Covers ? "t end lb wide" : "t end lb");
    }

    // A name that would cover the one before it in a narrow chart is left to wide ones.
    private IEnumerable<(string Name, double Right, double Y, bool Covers)> NamesOfReferences
    {
        get
        {
            var (drawing, taken) = (Drawing, new List<(double Right, double Y)>());
            foreach (var reference in References)
            {
                if (End(reference) is not { } end) continue;
                var name = Short(reference.Name);
                var room = TextWidth.Of(name, 12) / CurvePlot.NarrowestPlot * 100;
                var (right, y) = (Math.Min(Math.Max(drawing.X(end.X), room), 99), Math.Max(drawing.Y(end.Y) - 5, 12));
                var covers = room > 98 || taken.Exists(t => Math.Abs(t.Right - right) < room && Math.Abs(t.Y - y) < 14);
                if (!covers) taken.Add((right, y));
                yield return (name, right, y, covers);
            }
        }
    }

    private protected override PlotFigure Live() => ScatterFigure.Of(this);
}
