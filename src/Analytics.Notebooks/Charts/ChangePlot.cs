using Analytics.Notebooks.Charts.Live;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.Charts;

/// <summary>Who changed: each player's change with its interval, the numbers, and plain words.</summary>
public sealed class ChangePlot : FigureBlock
{
    internal const string NumbersHead = "Change (95\u2009% interval)";
    internal const string WordsHead = "What it says";
    private const int RowPixels = 26;
    private const double NarrowestStrip = 300;

    /// <summary>The axis of the change, with unit and direction.</summary>
    public required Axis Axis { get; init; }

    /// <summary>The rows, in any order; drawn from the best change down.</summary>
    public required IReadOnlyList<ChangeRow> Rows { get; init; }

    /// <summary>Head of the names.</summary>
    public string NameHead { get; init; } = "Player";

    /// <summary>Whether the rows stay in the order given.</summary>
    public bool InOrder { get; init; }

    /// <summary>Half width of the band "too small to matter" about zero, in the unit of the axis; null draws no band.</summary>
    public double? TooSmall { get; init; }

    /// <summary>Undecided rows shown in the chart; further ones are folded under it. Clear rows always show.</summary>
    public int UndecidedShown { get; init; } = int.MaxValue;

    /// <summary>Whether folded rows open in print; false where the same numbers are printed elsewhere.</summary>
    public bool FoldedInPrint { get; init; } = true;

    /// <inheritdoc/>
    public override DataTable Numbers => TableOf(Sorted(Rows));

    private protected override DataTable NumbersShown => TableOf(Shown);

    private DataTable TableOf(IEnumerable<ChangeRow> rows) => DataTable.Of(Title, rows, t => t
        .Text(NameHead, r => r.Name)
        .Change("Change", Axis.Unit, Axis.Decimals, r => r.Change)
        .Numeric("95\u2009% interval", Axis.Unit, r => Figures.Limits(r.Low, r.High, Axis.Decimals, signed: true).Trim('(', ')'))
        .Text("What it says", r => new Cell(r.Words, r.Shown.Length == 0 ? r.Note : r.Note.Length == 0 ? r.Shown : $"{r.Shown}; {r.Note}", r.Tone)));

    internal LinearScale Scale => LinearScale.Over(
        Rows.SelectMany(r => new[] { r.Change, r.Low ?? 0, r.High ?? 0 }).Concat([0, TooSmall ?? 0, -(TooSmall ?? 0)]), NarrowestStrip, signed: true, air: 0.04);

    internal Window? Window => TooSmall is { } half ? new Window("too small to matter", -half, half) : null;

    internal IReadOnlyList<ChangeRow> Shown => [.. Sorted(Split.Shown)];

    internal IReadOnlyList<ChangeRow> Folded => [.. Sorted(Split.Folded)];

    // Of the undecided, those furthest from zero stay in sight.
    private (IEnumerable<ChangeRow> Shown, IEnumerable<ChangeRow> Folded) Split
    {
        get
        {
            var undecided = Rows.Where(r => !r.IsClear).OrderByDescending(r => Math.Abs(r.Change)).ThenBy(r => r.Name, StringComparer.Ordinal).ToArray();
            return (Rows.Where(r => r.IsClear).Concat(undecided.Take(UndecidedShown)), undecided.Skip(UndecidedShown));
        }
    }

    /// <inheritdoc/>
    protected override void WriteDrawing(Markup html) => WriteRows(html, Shown);

    /// <inheritdoc/>
    protected override void WriteMore(Markup html)
    {
        if (Folded.Count == 0) return;
        html.Add($"<details class=\"more{(FoldedInPrint ? "" : " scr")}\"><summary>{Folded.Count} more where the test cannot tell yet</summary>");
        WriteRows(html, Folded);
        html.Raw("</details>");
    }

    private protected override int NarrowestLive => 960;

    private protected override PlotFigure Live() => ChangeFigure.Of(this, RowPixels);

    private void WriteRows(Markup html, IEnumerable<ChangeRow> rows)
    {
        var scale = Scale;
        new StripTable(scale, Axis)
        {
            NameHead = NameHead,
            NumbersHead = NumbersHead,
            WordsHead = WordsHead,
            Window = Window,
            ZeroLine = true,
        }.Write(html, rows.Select(r => new StripRow(r.Name, r.Group, Drawn(r, scale), Beside(r), r.Words, r.Note, r.Tone)));
    }

    private Markup Beside(ChangeRow row)
    {
        if (row.Shown.Length > 0) return new Markup().Add($"{row.Shown}");
        var limits = Figures.Limits(row.Low, row.High, Axis.Decimals, signed: true);
        var numbers = new Markup().Add($"{Figures.Signed(row.Change, Axis.Decimals, Axis.Unit)}");
        return limits.Length == 0 ? numbers : numbers.Add($" <i>{limits}</i>");
    }

    private static Markup Drawn(ChangeRow row, LinearScale scale)
    {
        var marks = new Markup();
        if (row.Low is { } low && row.High is { } high && LinearScale.CanDraw(low) && LinearScale.CanDraw(high))
            marks.Add(Marks.Span(scale.Percent(low), scale.Percent(high)));
        if (!LinearScale.CanDraw(row.Change)) return marks;
        var at = scale.Percent(row.Change);
        return marks.Add(row.IsClear ? Marks.Diamond(at) : row.Verdict is ChangeVerdict.TooSmallToMatter ? Marks.Small(at) : Marks.Hollow(at));
    }

    private IEnumerable<ChangeRow> Sorted(IEnumerable<ChangeRow> rows)
        => InOrder ? Rows.Where(rows.ToHashSet(ReferenceEqualityComparer.Instance).Contains) : rows.OrderBy(r => Axis.Better == Better.Lower ? r.Change : -r.Change).ThenBy(r => r.Name, StringComparer.Ordinal);
}
