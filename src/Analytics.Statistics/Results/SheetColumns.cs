namespace Analytics.Statistics.Results;

/// <summary>The cells of a sheet as text; a column that no line fills is left out. Every form of a result is made from this.</summary>
/// <param name="Heads">Heads of the columns; empty for the first, which names the rows.</param>
/// <param name="Rows">One row a figure, each as long as <paramref name="Heads"/>.</param>
public sealed record SheetColumns(IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    private static readonly (string Head, Func<ResultLine, string> Cell)[] s_columns =
    [
        ("", l => l.Name),
        ("value", l => Join(SheetNumber.Of(l.Value), l.Unit)),
        ("interval", IntervalCell),
        ("SE", l => l.StandardError is { } se ? SheetNumber.Of(se) : string.Empty),
        ("df", l => l.DegreesOfFreedom is { } df ? SheetNumber.Of(df) : string.Empty),
        (NoteHead, l => l.Note),
    ];

    /// <summary>The words column, flush left; all others are figures.</summary>
    public const string NoteHead = "note";

    /// <summary>Lays a sheet out.</summary>
    /// <param name="sheet">The sheet.</param>
    public static SheetColumns Of(ResultSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var used = s_columns.Where((c, i) => i < 2 || sheet.Lines.Any(l => c.Cell(l).Length > 0)).ToArray();
        return new([.. used.Select(c => c.Head)], [.. sheet.Lines.Select(l => (IReadOnlyList<string>)[.. used.Select(c => c.Cell(l))])]);
    }

    private static string IntervalCell(ResultLine line) => line.Interval is { } i
        ? FormattableString.Invariant($"{SheetNumber.Of(i.Low)} to {SheetNumber.Of(i.High)} ({100 * i.Level:0.##} %)")
        : string.Empty;

    private static string Join(string value, string unit) => unit.Length == 0 ? value : $"{value} {unit}";
}
