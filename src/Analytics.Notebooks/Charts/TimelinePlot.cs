using Analytics.Notebooks.Charts.Live;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.Charts;

/// <summary>A named event on a time line that is neither its beginning nor its end, for example a touchdown.</summary>
/// <param name="Name">What happened.</param>
/// <param name="At">When, in the unit of the axis.</param>
public sealed record TimelineMark(string Name, double At);

/// <summary>One repetition on a time line, from 0 to its last event.</summary>
/// <param name="Name">Name of the player.</param>
/// <param name="Group">Which repetition, in small print.</param>
/// <param name="End">Time of the last event, in the unit of the axis.</param>
/// <param name="Low">Lower limit of its interval; null when no error is known.</param>
/// <param name="High">Upper limit of its interval; null when no error is known.</param>
/// <param name="Words">What can be said; may be empty.</param>
/// <param name="Note">A remark under the words; may be empty.</param>
public sealed record TimelineRow(string Name, string Group, double End, double? Low, double? High, string Words = "", string Note = "")
{
    /// <summary>Events in between; none by default.</summary>
    public IReadOnlyList<TimelineMark> Marks { get; init; } = [];

    internal string Label => Group.Length == 0 ? Name : $"{Name}, {Group}";
}

/// <summary>Events of repetitions, all counted from the first one, against a target window when there is one.</summary>
public sealed class TimelinePlot : FigureBlock
{
    private const int RowPixels = 26;
    private const double NarrowestStrip = 300;

    /// <summary>The axis, with unit.</summary>
    public required Axis Axis { get; init; }

    /// <summary>The repetitions in the order shown.</summary>
    public required IReadOnlyList<TimelineRow> Rows { get; init; }

    /// <summary>A named window for the last event; null for none.</summary>
    public Window? Window { get; init; }

    /// <summary>Name of the last event.</summary>
    public required string EndName { get; init; }

    /// <summary>Name of the event at 0.</summary>
    public required string StartName { get; init; }

    /// <inheritdoc/>
    public override DataTable Numbers => DataTable.Of(Title, Rows, t =>
    {
        t.Text("Player", r => new Cell(r.Name, r.Group));
        if (Rows.Any(r => r.Marks.Count > 0)) t.Text("In between", r => string.Join("; ", r.Marks.Select(m => $"{m.Name} {Figures.Plain(m.At, Axis.Decimals, Axis.Unit)}")));
        t.Number(Words(EndName), Axis.Unit, Axis.Decimals, r => r.End)
        .Numeric("95\u2009% interval", Axis.Unit, r => Figures.Limits(r.Low, r.High, Axis.Decimals).Trim('(', ')'))
        .Text("What it says", r => new Cell(r.Words, r.Note));
    });

    internal LinearScale Scale => LinearScale.Over(
        Rows.SelectMany(r => r.Marks.Select(m => m.At).Concat(new[] { 0, r.End, r.Low, r.High, Window?.Low, Window?.High }.OfType<double>())), NarrowestStrip, air: 0.03);

    /// <inheritdoc/>
    protected override void WriteKey(Markup html)
    {
        html.Raw("<p class=\"key\">").Add(Marks.Key(Marks.Middle(50, -7, 7), StartName)).Add(Marks.Key(Marks.Dots(Marks.Dot(50, 0)), EndName));
        foreach (var name in Rows.SelectMany(r => r.Marks.Select(m => m.Name)).Distinct()) html.Add(Marks.Key(Marks.Ring(50, 0), name));
        html.Raw("</p>");
    }

    /// <inheritdoc/>
    protected override void WriteDrawing(Markup html)
    {
        var scale = Scale;
        new StripTable(scale, Axis) { NameHead = "Player", NumbersHead = $"{Words(EndName)} (95\u2009% interval)", WordsHead = "What it says", Window = Window, RowClass = "tl" }
            .Write(html, Rows.Select(r => new StripRow(r.Name, r.Group, Drawn(r, scale), Beside(r), r.Words, r.Note, Tone.Plain)));
    }

    private protected override int NarrowestLive => 960;

    private protected override PlotFigure Live() => TimelineFigure.Of(this, RowPixels);

    private static string Words(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];

    private Markup Beside(TimelineRow row)
    {
        var limits = Figures.Limits(row.Low, row.High, Axis.Decimals);
        return new Markup().Add($"{Figures.Plain(row.End, Axis.Decimals, Axis.Unit)} <i>{(limits.Length > 0 ? limits : "(no error known)")}</i>");
    }

    private static Markup Drawn(TimelineRow row, LinearScale scale)
    {
        var marks = new Markup();
        if (!LinearScale.CanDraw(row.End)) return marks;
        marks.Add($"<g class=\"w\">{Marks.Span(scale.Percent(0), scale.Percent(row.End))}</g>").Add(Marks.Middle(scale.Percent(0), -6, 6));
        foreach (var mark in row.Marks.Where(m => LinearScale.CanDraw(m.At))) marks.Add(Marks.Ring(scale.Percent(mark.At), 0));
        if (row.Low is { } low && row.High is { } high && LinearScale.CanDraw(low) && LinearScale.CanDraw(high)) marks.Add(Marks.Span(scale.Percent(low), scale.Percent(high)));
        return marks.Add(Marks.Dots(Marks.Dot(scale.Percent(row.End), 0)));
    }
}
