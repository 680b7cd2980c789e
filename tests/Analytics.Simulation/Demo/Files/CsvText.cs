using System.Globalization;
using System.Text;

namespace Analytics.Simulation.Demo.Files;

/// <summary>The ways a spreadsheet writes a CSV file.</summary>
public sealed record CsvText(char Separator, bool DecimalComma, bool ByteOrderMark, string LineEnd)
{
    public static readonly CsvText Plain = new(',', false, false, "\n");

    /// <summary>As saved by a spreadsheet set to a country that writes decimal commas.</summary>
    public static readonly CsvText Continental = new(';', true, true, "\r\n");

    public byte[] Write(Sheet sheet)
    {
        var text = new StringBuilder();
        AppendLine(text, sheet.Columns);
        foreach (var row in sheet.Rows) AppendLine(text, row);
        var encoding = new UTF8Encoding(ByteOrderMark);
        return [.. encoding.GetPreamble(), .. encoding.GetBytes(text.ToString())];
    }

    /// <summary>The cell as it stands in this kind of file.</summary>
    public string Cell(string cell)
        => DecimalComma && double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? cell.Replace('.', ',') : cell;

    private void AppendLine(StringBuilder text, IReadOnlyList<string> cells)
    {
        for (var i = 0; i < cells.Count; i++)
        {
            if (i > 0) text.Append(Separator);
            var cell = Cell(cells[i]);
            if (cell.AsSpan().IndexOfAny(Separator, '"', '\n') < 0) text.Append(cell);
            else text.Append('"').Append(cell.Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"');
        }

        text.Append(LineEnd);
    }
}
