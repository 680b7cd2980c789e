using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tables;

/// <summary>
/// A table with a caption and scoped heads. The first column names the row. In a narrow place each row becomes a
/// small card with the heads as labels; in print the head repeats on every page.
/// </summary>
public sealed class DataTable : ReportBlock
{
    /// <summary>A table from its cells.</summary>
    /// <param name="caption">What the table shows.</param>
    /// <param name="columns">The columns; at least one.</param>
    /// <param name="rows">The rows; each as long as <paramref name="columns"/>.</param>
    /// <param name="cap">Rows shown at most; the rest is counted under the table. Null shows all.</param>
    public DataTable(string caption, IEnumerable<Column> columns, IEnumerable<IReadOnlyList<Cell>> rows, int? cap = null)
    {
        Caption = caption;
        Columns = [.. columns];
        Rows = [.. rows];
        if (Columns.Count == 0) throw new ArgumentException("A table needs at least one column.", nameof(columns));
        if (cap < 1) throw new ArgumentOutOfRangeException(nameof(cap), cap, "The cap must be at least 1 row, or null for no cap.");
        for (var i = 0; i < Rows.Count; i++)
            if (Rows[i].Count != Columns.Count)
                throw new ArgumentException($"Row {i + 1} has {Rows[i].Count} cells, the table has {Columns.Count} columns.", nameof(rows));
        Shown = Math.Min(Rows.Count, cap ?? int.MaxValue);
        Total = Rows.Count;
    }

    /// <summary>What the table shows.</summary>
    public string Caption { get; }

    /// <summary>The columns.</summary>
    public IReadOnlyList<Column> Columns { get; }

    /// <summary>All rows, also those beyond the cap.</summary>
    public IReadOnlyList<IReadOnlyList<Cell>> Rows { get; }

    /// <summary>How many rows are shown.</summary>
    public int Shown { get; }

    // More than Rows where a long source was cut before its cells were made.
    internal long Total { get; init; }

    /// <summary>A table from rows of any type.</summary>
    /// <typeparam name="T">Type of a row.</typeparam>
    /// <param name="caption">What the table shows.</param>
    /// <param name="rows">The rows in order.</param>
    /// <param name="columns">Adds the columns.</param>
    /// <param name="cap">Rows shown at most; null for all.</param>
    public static DataTable Of<T>(string caption, IEnumerable<T> rows, Action<TableColumns<T>> columns, int? cap = null)
    {
        ArgumentNullException.ThrowIfNull(columns);
        var set = new TableColumns<T>();
        columns(set);
        return new DataTable(caption, set.Heads, rows.Select(set.Row), cap);
    }

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        DataTableHtml.Write(html, this);
        if (Remark is { } remark) html.Add($"<p class=\"nt\">{remark}</p>");
    }

    /// <inheritdoc/>
    public override string ToText()
    {
        var cells = Rows.Take(Shown).Select(r => r.Select(PlainText).ToArray());
        return Join([Caption, TextGrid.Of([.. Columns.Select(c => c.HeadWithUnit)], [.. Columns.Select(c => c.Numeric)], cells), Remark ?? string.Empty]);
    }

    private string? Remark => Total == 0 ? "No rows." : Shown < Total ? string.Create(CultureInfo.InvariantCulture, $"{Shown} of {Total} rows shown.") : null;

    private static string PlainText(Cell cell)
    {
        var text = cell.IsEmpty ? Figures.Missing : cell.Text!;
        return cell.Note.Length == 0 ? text : cell.IsEmpty ? $"({cell.Note})" : $"{text} ({cell.Note})";
    }
}
