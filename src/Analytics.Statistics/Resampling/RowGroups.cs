namespace Analytics.Statistics.Resampling;

/// <summary>Rows of a table grouped by the unit that is resampled: each row its own unit, or all rows of an athlete together.</summary>
internal sealed class RowGroups
{
    private readonly int[][] _rows;
    private readonly bool _single;

    private RowGroups(int[][] rows, bool single)
    {
        _rows = rows;
        _single = single;
        Largest = rows.Max(r => r.Length);
    }

    public int Units => _rows.Length;

    public int Largest { get; }

    public static RowGroups Singles(int rows) => new([.. Enumerable.Range(0, rows).Select(i => new[] { i })], true);

    /// <summary>Groups in the order of their first row.</summary>
    public static RowGroups By<T>(IReadOnlyList<T> labels) where T : notnull
        => new([.. labels.Select((label, row) => (label, row)).GroupBy(p => p.label, p => p.row).Select(g => g.ToArray())], false);

    /// <summary>The rows of the drawn units, written into the buffer.</summary>
    public ReadOnlySpan<int> Rows(ReadOnlySpan<int> units, Span<int> buffer)
    {
        if (_single) return units;
        var count = 0;
        foreach (var unit in units)
        {
            var rows = _rows[unit];
            rows.CopyTo(buffer[count..]);
            count += rows.Length;
        }

        return buffer[..count];
    }

    /// <summary>All rows in order.</summary>
    public int[] All() => [.. _rows.SelectMany(r => r).Order()];

    /// <summary>All rows but those of one unit, in order.</summary>
    public int[] Without(int unit) => [.. _rows.Where((_, u) => u != unit).SelectMany(r => r).Order()];
}
