using System.Globalization;
using System.Text;
using Analytics.Season.Cells;
using Analytics.Season.Files;
using ExcelDataReader;

namespace Analytics.Season.Tables;

/// <summary>The sheets of an .xlsx workbook as tables.</summary>
internal static class Workbook
{
    // ExcelDataReader looks up Windows-1252 when it starts.
    static Workbook() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    /// <summary>Reads all sheets that hold something.</summary>
    /// <exception cref="InputFault">The workbook cannot be used.</exception>
    public static IReadOnlyList<Table> Open(FileContent file, CancellationToken cancellation)
    {
        WorkbookGuard.Check(file.Bytes);
        try
        {
            using var reader = ExcelReaderFactory.CreateOpenXmlReader(new MemoryStream(WorkbookFormulas.AsText(file.Bytes), writable: false));
            var sheets = new List<Table>();
            do
            {
                if (Sheet(file, reader, cancellation) is { } sheet) sheets.Add(sheet);
            }
            while (reader.NextResult());
            return sheets.Count > 0 ? sheets : throw new InputFault("the workbook has no sheet with a head line.", "Write the column names in the first row of each sheet.");
        }
        catch (Exception error) when (error is not (InputFault or OperationCanceledException or OutOfMemoryException))
        {
            // The package throws whatever its XML and number parsing throws on damaged parts.
            throw new InputFault($"the workbook is damaged: {CellText.Show(error.Message).TrimEnd('.')}.", "Open it in the spreadsheet and save it again as .xlsx.");
        }
    }

    private static SheetTable? Sheet(FileContent file, IExcelDataReader reader, CancellationToken cancellation)
    {
        string[]? head = null;
        var headLine = 0;
        var rows = new List<TableRow>();
        while (reader.Read())
        {
            if ((reader.Depth & 0x3ff) is 0) cancellation.ThrowIfCancellationRequested();
            var cells = Cells(reader);
            if (cells.Length is 0) continue;
            if (head is null) (head, headLine) = (cells, reader.Depth + 1);
            else rows.Add(new TableRow(reader.Depth + 1, cells, cells.Length));
        }

        return head is null ? null : new SheetTable(file, reader.Name, rows) { Head = head, HeadLine = headLine };
    }

    /// <summary>The cells of the row up to the last one with a value.</summary>
    private static string[] Cells(IExcelDataReader reader)
    {
        var count = 0;
        var cells = new string[reader.FieldCount];
        for (var i = 0; i < cells.Length; i++)
        {
            cells[i] = Text(reader, i);
            if (!string.IsNullOrWhiteSpace(cells[i])) count = i + 1;
        }

        return cells[..count];
    }

    private static string Text(IExcelDataReader reader, int index) => reader.GetValue(index) switch
    {
        null => "",
        string text => text,
        double number => CellText.Exact(number),
        DateTime { TimeOfDay.Ticks: 0 } day => DateText.Iso(DateOnly.FromDateTime(day)),
        DateTime time => time.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture),
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        var other => other.ToString() ?? "",
    };
}

/// <summary>A sheet of a workbook.</summary>
internal sealed class SheetTable(FileContent file, string name, IReadOnlyList<TableRow> rows) : Table($"{file.Path}#{name}", file.Sha256)
{
    /// <summary>Name of the sheet.</summary>
    public string Name => name;

    /// <inheritdoc/>
    public override bool HasSerialDates => true;

    /// <inheritdoc/>
    public override IEnumerable<TableRow> Rows() => rows;
}
