using Analytics.Season.Columns;
using Analytics.Season.Files;
using Analytics.Season.Tables;

namespace Analytics.Season.Intake;

/// <summary>One reading of a season: its folder, and what has been counted, held back and remarked so far.</summary>
internal sealed class SeasonIntake(SeasonFolder folder, CancellationToken cancellation)
{
    public SeasonFolder Folder => folder;

    public CancellationToken Cancellation => cancellation;

    public List<FileTally> Files { get; } = [];

    public List<InputNote> Notes { get; } = [];

    public void Note(string file, string text) => Notes.Add(new InputNote(file, text));

    /// <summary>An intake of the same folder that counts for itself.</summary>
    public SeasonIntake Part() => new(folder, cancellation);

    /// <summary>Takes over what a part has counted and remarked.</summary>
    public void Absorb(SeasonIntake part)
    {
        Files.AddRange(part.Files);
        Notes.AddRange(part.Notes);
    }

    /// <summary>Starts counting a file or sheet.</summary>
    public FileTally Count(string path, string sha256 = "")
    {
        var tally = new FileTally(path, sha256);
        Files.Add(tally);
        return tally;
    }

    /// <summary>Opens a file as tables; one that cannot be opened is held back as a whole.</summary>
    public IReadOnlyList<Table> Open(string path)
    {
        var sha = "";
        try
        {
            var file = folder.Read(path);
            sha = file.Sha256;
            if (path.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase)) return Workbook.Open(file, cancellation);
            var table = CsvTable.Open(file, out var remark);
            if (remark is not null) Note(path, remark);
            return [table];
        }
        catch (InputFault fault)
        {
            Count(path, sha).HoldBack(fault, 0);
            return [];
        }
    }

    /// <summary>Reads the rows of a table. A row in which <paramref name="read"/> finds a fault is held back.</summary>
    /// <param name="table">The table.</param>
    /// <param name="columns">Columns it may have.</param>
    /// <param name="withGates">Whether gate columns are accepted.</param>
    /// <param name="read">Reads one row.</param>
    /// <returns>The count of this table.</returns>
    public FileTally ReadRows(Table table, IReadOnlyList<Column> columns, bool withGates, Action<RowCells, FileTally> read)
    {
        var tally = Count(table.Path, table.Sha256);
        HeadMap head;
        try
        {
            head = HeadMap.Of(table, columns, withGates);
        }
        catch (InputFault fault)
        {
            HoldBackAll(table, tally, fault, table.HeadLine);
            return tally;
        }

        foreach (var remark in head.Remarks) Note(table.Path, remark);
        var cells = new RowCells(head, table);
        foreach (var row in table.Rows())
        {
            if ((tally.Rows & 0x3ff) is 0) cancellation.ThrowIfCancellationRequested();
            tally.CountRow(Math.Max(1, row.SwallowedLines));
            cells.MoveTo(row);
            if (row.SwallowedLines > 0) HoldBackSwallowed(row, tally);
            else read(cells, tally);
            if (cells.Faults.Count > 0 && row.SwallowedLines is 0) tally.HoldBack(row.Line, cells.Faults, cells.About);
        }

        foreach (var remark in cells.Remarks) Note(table.Path, remark);
        if (tally.Rows is 0) Note(table.Path, "The table has a head but no rows.");
        return tally;
    }

    /// <summary>Counts a table that is held back as a whole.</summary>
    public void HoldBackAll(Table table, FileTally tally, InputFault fault, int line)
    {
        foreach (var row in table.Rows())
        {
            if ((tally.Rows & 0x3ff) is 0) cancellation.ThrowIfCancellationRequested();
            tally.CountRow(Math.Max(1, row.SwallowedLines));
        }

        tally.HoldBack(fault, line);
    }

    private static void HoldBackSwallowed(TableRow row, FileTally tally)
    {
        var last = row[row.Count - 1];
        var fault = new CellFault("", Cells.CellText.Show(last), $"a quote opened here is never closed, so {row.SwallowedLines} lines up to the end of the file were read as one cell", "Take out the stray quote, or close it.");
        tally.HoldBack(row.Line, [fault], null, row.SwallowedLines);
    }
}
