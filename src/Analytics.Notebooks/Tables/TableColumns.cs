using Analytics.Notebooks.Look;
using Analytics.Statistics;

namespace Analytics.Notebooks.Tables;

/// <summary>Collects the columns of a table, each with how it comes from a row.</summary>
/// <typeparam name="T">Type of a row.</typeparam>
public sealed class TableColumns<T>
{
    private readonly List<(Column Column, Func<T, Cell> Cell)> _columns = [];

    internal IEnumerable<Column> Heads => _columns.Select(c => c.Column);

    internal IReadOnlyList<Cell> Row(T row) => [.. _columns.Select(c => c.Cell(row))];

    /// <summary>A column of words. The first one added names the rows.</summary>
    /// <param name="head">Its head.</param>
    /// <param name="cell">Its cell; plain text or a <see cref="Cell"/> with note and tone.</param>
    public TableColumns<T> Text(string head, Func<T, Cell> cell) => Add(new Column(head), cell);

    /// <summary>A column of numbers with the same decimals in every row; the unit stands in the head.</summary>
    /// <param name="head">Its head, without unit.</param>
    /// <param name="unit">Unit symbol; empty for none.</param>
    /// <param name="decimals">Decimals, 0 to 9.</param>
    /// <param name="value">The number; null when nothing was measured.</param>
    public TableColumns<T> Number(string head, string unit, int decimals, Func<T, double?> value)
        => Add(new Column(head, true, unit), row => new Cell(Figures.Plain(value(row), decimals)));

    /// <summary>A column of changes: numbers with sign.</summary>
    /// <param name="head">Its head, without unit.</param>
    /// <param name="unit">Unit symbol; empty for none.</param>
    /// <param name="decimals">Decimals, 0 to 9.</param>
    /// <param name="value">The change; null when it is not known.</param>
    public TableColumns<T> Change(string head, string unit, int decimals, Func<T, double?> value)
        => Add(new Column(head, true, unit), row => new Cell(Figures.Signed(value(row), decimals)));

    /// <summary>A column of estimates with their interval.</summary>
    /// <param name="head">Its head, without unit.</param>
    /// <param name="unit">Unit symbol; empty for none.</param>
    /// <param name="decimals">Decimals, 0 to 9.</param>
    /// <param name="estimate">The estimate; null when there is none. One without interval says "no error known".</param>
    public TableColumns<T> Estimate(string head, string unit, int decimals, Func<T, Estimate?> estimate)
        => Add(new Column(head, true, unit), row => estimate(row) is { } e
            ? new Cell(Figures.Interval(e.Value, e.Interval, decimals), e.Interval is null ? "no error known" : string.Empty)
            : Cell.Missing);

    /// <summary>A numeric column whose text the caller makes.</summary>
    /// <param name="head">Its head, without unit.</param>
    /// <param name="unit">Unit symbol; empty for none.</param>
    /// <param name="cell">Its cell.</param>
    public TableColumns<T> Numeric(string head, string unit, Func<T, Cell> cell) => Add(new Column(head, true, unit), cell);

    private TableColumns<T> Add(Column column, Func<T, Cell> cell)
    {
        _columns.Add((column, cell));
        return this;
    }
}
