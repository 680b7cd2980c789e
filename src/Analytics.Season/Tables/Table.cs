using Analytics.Season.Cells;

namespace Analytics.Season.Tables;

/// <summary>A table as read from a file or sheet: a head and rows of text cells.</summary>
internal abstract class Table(string path, string sha256)
{
    /// <summary>Path inside the season folder; sheet after '#' for a workbook.</summary>
    public string Path { get; } = path;

    /// <summary>SHA-256 of the file.</summary>
    public string Sha256 { get; } = sha256;

    /// <summary>Column heads as written, in order.</summary>
    public required IReadOnlyList<string> Head { get; init; }

    /// <summary>Line of the head, from 1.</summary>
    public required int HeadLine { get; init; }

    /// <summary>Whether a comma in a number can only be a decimal comma or a thousands mark (columns are not separated by commas).</summary>
    public virtual bool CommaIsFree => true;

    /// <summary>Whether the table writes decimal commas: some cell shows it, and none groups thousands with commas. Looked for when first asked.</summary>
    public bool HasDecimalCommas => decimalCommas ??= LooksDecimal();

    private bool? decimalCommas;

    /// <summary>Whether a plain number may be a date, counted in days as spreadsheets do.</summary>
    public virtual bool HasSerialDates => false;

    /// <summary>The data rows; blank rows are no rows. The cells of a row are valid until the next.</summary>
    public abstract IEnumerable<TableRow> Rows();

    // One program wrote the file, in one way.
    private bool LooksDecimal()
    {
        var seen = false;
        foreach (var row in Rows())
        {
            for (var i = 0; i < row.Count; i++)
            {
                if (row.Cells[i] is null || NumberText.HasDecimalComma(row.Cells[i]) is not { } isDecimal) continue;
                if (!isDecimal) return false;
                seen = true;
            }
        }

        return seen;
    }

    /// <summary>Whether a row has nothing in it.</summary>
    protected static bool IsBlank(ReadOnlySpan<string> cells)
    {
        foreach (var cell in cells)
            if (!string.IsNullOrWhiteSpace(cell)) return false;
        return true;
    }
}

/// <summary>A row of cells.</summary>
/// <param name="Line">Line or sheet row, from 1.</param>
/// <param name="Cells">The cells as text, at least as many as read.</param>
/// <param name="Count">Cells read in this row.</param>
/// <param name="SwallowedLines">Lines read as part of one cell because a quote was never closed; 0 normally.</param>
internal readonly record struct TableRow(int Line, string[] Cells, int Count, int SwallowedLines = 0)
{
    /// <summary>The cell, empty when the row is shorter.</summary>
    public string this[int index] => index < Count ? Cells[index] : "";
}
