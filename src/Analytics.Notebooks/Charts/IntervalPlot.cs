using Analytics.Notebooks.Charts.Live;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.Charts;

/// <summary>One estimate with its interval and the repetitions behind it.</summary>
/// <param name="Name">Name of the player or group.</param>
/// <param name="Value">The estimate, in the unit of the axis; null when there is none.</param>
/// <param name="Low">Lower limit of its interval; null when no error is known.</param>
/// <param name="High">Upper limit of its interval; null when no error is known.</param>
/// <param name="Words">What can be said, for example <c>in window: 61 %</c>; may be empty.</param>
/// <param name="Tone">Colour of the words.</param>
/// <param name="Group">Group in small print; may be empty.</param>
/// <param name="Note">A remark under the words; may be empty.</param>
public sealed record IntervalRow(
    string Name, double? Value, double? Low, double? High, string Words = "", Tone Tone = Tone.Plain, string Group = "", string Note = "")
{
    /// <summary>Single repetitions; none by default.</summary>
    public IReadOnlyList<double> Repetitions { get; init; } = [];
}

/// <summary>Estimates with their 95 % intervals, against a target window when there is one.</summary>
public sealed class IntervalPlot : FigureBlock
{
    private const int RowPixels = 30;
    private const double NarrowestStrip = 300;

    /// <summary>The axis, with unit and direction.</summary>
    public required Axis Axis { get; init; }

    /// <summary>The rows in the order shown.</summary>
    public required IReadOnlyList<IntervalRow> Rows { get; init; }

    /// <summary>A named window, for example the target; null for none.</summary>
    public Window? Window { get; init; }

    /// <summary>Head of the names.</summary>
    public string NameHead { get; init; } = "Player";

    /// <inheritdoc/>
    public override DataTable Numbers => DataTable.Of(Title, Rows, t => t
        .Text(NameHead, r => r.Name)
        .Number("Estimate", Axis.Unit, Axis.Decimals, r => r.Value)
        .Numeric("95\u2009% interval", Axis.Unit, r => Figures.Limits(r.Low, r.High, Axis.Decimals).Trim('(', ')'))
        .Number("Repetitions", string.Empty, 0, r => r.Repetitions.Count == 0 ? null : r.Repetitions.Count)
        .Text("What it says", r => new Cell(r.Words, r.Note, r.Tone)));

    internal LinearScale Scale => LinearScale.Over(
        Rows.SelectMany(r => r.Repetitions.Concat(new[] { r.Value, r.Low, r.High, Window?.Low, Window?.High }.OfType<double>())), NarrowestStrip);

    /// <inheritdoc/>
    protected override void WriteDrawing(Markup html)
    {
        var scale = Scale;
        new StripTable(scale, Axis) { NameHead = NameHead, NumbersHead = "Estimate (95\u2009% interval)", WordsHead = "What it says", Window = Window, RowClass = "ip" }
            .Write(html, Rows.Select(r => new StripRow(r.Name, r.Group, Drawn(r, scale), Beside(r), r.Words, r.Note, r.Tone)));
    }

    private protected override int NarrowestLive => 960;

    private protected override PlotFigure Live() => IntervalFigure.Of(this, RowPixels);

    private Markup Beside(IntervalRow row)
    {
        var limits = Figures.Limits(row.Low, row.High, Axis.Decimals);
        var numbers = new Markup().Add($"{Figures.Plain(row.Value, Axis.Decimals, Axis.Unit)}");
        if (limits.Length > 0) numbers.Add($" <i>{limits}</i>");
        else if (row.Value is not null) numbers.Raw(" <i>(no error known)</i>");
        return numbers;
    }

    private static Markup Drawn(IntervalRow row, LinearScale scale)
    {
        var marks = new Markup();
        if (row.Repetitions.Count > 0)
            marks.Add(Marks.Dots(row.Repetitions.Where(LinearScale.CanDraw).Select(r => Marks.Dot(scale.Percent(r), 7))));
        if (row.Low is { } low && row.High is { } high && LinearScale.CanDraw(low) && LinearScale.CanDraw(high))
            marks.Add(Marks.Span(scale.Percent(low), scale.Percent(high), -4));
        if (row.Value is { } value && LinearScale.CanDraw(value)) marks.Add(Marks.Middle(scale.Percent(value), -11, 3));
        return marks;
    }
}
