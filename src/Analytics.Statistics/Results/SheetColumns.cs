namespace Analytics.Statistics.Results;

/// <summary>The cells of a sheet; a column that no line fills is left out. Text and table are both made from this.</summary>
internal sealed record SheetColumns(IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    private static readonly (string Head, Func<ResultLine, string> Cell)[] s_columns =
    [
        ("", l => l.Name),
        ("value", l => Join(SheetNumber.Of(l.Value), l.Unit)),
        ("interval", IntervalCell),
        ("SE", l => l.StandardError is { } se ? SheetNumber.Of(se) : string.Empty),
        ("df", l => l.DegreesOfFreedom is { } df ? SheetNumber.Of(df) : string.Empty),
        ("note", l => l.Note),
    ];

    public static SheetColumns Of(ResultSheet sheet)
    {
        var used = s_columns.Where((c, i) => i < 2 || sheet.Lines.Any(l => c.Cell(l).Length > 0)).ToArray();
        return new([.. used.Select(c => c.Head)], [.. sheet.Lines.Select(l => (IReadOnlyList<string>)[.. used.Select(c => c.Cell(l))])]);
    }

    private static string IntervalCell(ResultLine line) => line.Interval is { } i
        ? FormattableString.Invariant($"{SheetNumber.Of(i.Low)} to {SheetNumber.Of(i.High)} ({100 * i.Level:0.##} %)")
        : string.Empty;

    private static string Join(string value, string unit) => unit.Length == 0 ? value : $"{value} {unit}";
}
