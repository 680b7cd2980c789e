using System.Text;

namespace Analytics.Statistics.Results;

/// <summary>A sheet as plain text.</summary>
internal static class SheetText
{
    public static string Of(ResultSheet sheet)
    {
        var cells = SheetColumns.Of(sheet);
        var rows = cells.Rows.Prepend(cells.Heads).ToList();
        var widths = cells.Heads.Select((_, i) => rows.Max(r => r[i].Length)).ToArray();
        var text = new StringBuilder(sheet.Title).Append('\n');
        foreach (var row in rows)
        {
            // Names and notes flush left, figures flush right.
            var padded = row.Select((c, i) => i == 0 || cells.Heads[i] == SheetColumns.NoteHead ? c.PadRight(widths[i]) : c.PadLeft(widths[i]));
            text.Append("  ").Append(string.Join("  ", padded).TrimEnd()).Append('\n');
        }

        text.Append("Method: ").Append(sheet.Method).Append('\n').Append("From: ").Append(sheet.Basis);
        foreach (var remark in sheet.Remarks) text.Append('\n').Append(remark);
        return text.ToString();
    }
}
