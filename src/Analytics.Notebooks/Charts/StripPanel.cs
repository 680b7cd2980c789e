using Analytics.Notebooks.Charts.Live;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.Charts;

/// <summary>One measure of a <see cref="StripPlot"/>: groups as rows, players as dots.</summary>
public sealed class StripPanel : FigureBlock
{
    private const int RowPixels = 28;
    private const double NarrowestStrip = 150;
    private const double UsualStrip = 190;

    /// <summary>The axis, with unit and direction.</summary>
    public required Axis Axis { get; init; }

    /// <summary>The groups in the order shown; the same order in every panel of a report.</summary>
    public required IReadOnlyList<StripGroup> Groups { get; init; }

    /// <inheritdoc/>
    public override DataTable Numbers => DataTable.Of(Title, Groups, t => t
        .Text("Group", g => g.Name)
        .Number("Players", string.Empty, 0, g => g.Dots.Count)
        .Number("Lowest", Axis.Unit, Axis.Decimals, g => g.Dots.Count == 0 ? null : g.Dots.Min(d => d.Value))
        .Number("Middle", Axis.Unit, Axis.Decimals, g => g.Middle)
        .Number("Highest", Axis.Unit, Axis.Decimals, g => g.Dots.Count == 0 ? null : g.Dots.Max(d => d.Value))
        .Number("Middle before", Axis.Unit, Axis.Decimals, g => g.MiddleBefore));

    internal LinearScale Scale => LinearScale.Over(
        Groups.SelectMany(g => g.Dots.Select(d => d.Value).Concat(Known(g.Middle, g.MiddleBefore))), NarrowestStrip, mostTicks: 5);

    /// <inheritdoc/>
    protected override void WriteDrawing(Markup html)
    {
        var scale = Scale;
        new StripTable(scale, Axis with { Quantity = string.Empty }) { NameHead = "group", NumbersHead = "middle", Panel = true }
            .Write(html, Groups.Select(g => new StripRow(
                g.Name, string.Empty, Drawn(g, scale), new Markup().Add($"{Figures.Plain(g.Middle, Axis.Decimals)}"), string.Empty, string.Empty, Tone.Plain)));
    }

    private protected override PlotFigure Live() => StripPanelFigure.Of(this, RowPixels, UsualStrip);

    private static Markup Drawn(StripGroup group, LinearScale scale)
    {
        var marks = new Markup();
        var dots = group.Dots.Where(d => LinearScale.CanDraw(d.Value)).ToArray();
        var offsets = Swarm.Offsets([.. dots.Select(d => scale.Percent(d.Value) * UsualStrip / 100)], 7, 8);
        marks.Add(Marks.Dots(dots.Select((d, i) => Marks.Dot(scale.Percent(d.Value), offsets[i]))));
        if (group.Middle is { } middle && LinearScale.CanDraw(middle)) marks.Add(Marks.Middle(scale.Percent(middle), -9, 10));
        if (group.MiddleBefore is { } before && LinearScale.CanDraw(before)) marks.Add(Marks.Ring(scale.Percent(before), -12));
        return marks;
    }

    private static IEnumerable<double> Known(params double?[] values) => values.OfType<double>();
}
