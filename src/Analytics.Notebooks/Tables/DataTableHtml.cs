using System.Globalization;
using System.Text;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tables;

/// <summary>Writes a <see cref="DataTable"/> as HTML.</summary>
internal static class DataTableHtml
{
    // A table this short stays on one printed page.
    private const int FewRows = 10;

    // A table this wide stands closer, else it is wider than a tablet.
    private const int ManyColumns = 7;

    public static void Write(Markup html, DataTable table)
    {
        html.Add($"<table class=\"{Classes(table)}\" style=\"{CardLabels(table.Columns)}\"><caption>{table.Caption}</caption><thead><tr>");
        foreach (var column in table.Columns) WriteHead(html, column);
        html.Raw("</tr></thead><tbody>");
        foreach (var row in table.Rows.Take(table.Shown)) WriteRow(html, row);
        html.Raw("</tbody></table>");
    }

    // Which columns are numbers is said once on the table (n2, n3 ...), not on every cell. In cards several numbers
    // stand side by side, a single one in a line of its own.
    private static string Classes(DataTable table)
    {
        var numeric = table.Columns.Select((c, i) => c.Numeric ? string.Create(CultureInfo.InvariantCulture, $" n{i + 1}") : string.Empty);
        return "dt" + (table.Shown <= FewRows ? " few" : string.Empty) + (table.Columns.Count(c => c.Numeric) == 1 ? " one" : string.Empty) + (table.Columns.Count >= ManyColumns ? " mny" : string.Empty) + string.Concat(numeric);
    }

    private static void WriteHead(Markup html, Column column)
    {
        var classes = OutsideText.HasLongWord(column.Head) ? " class=\"lg\"" : string.Empty;
        html.Raw("<th scope=\"col\"" + classes + ">").Add($"{OutsideText.Label(column.Head)}");
        if (column.Unit.Length > 0) html.Add($" <small>{column.Unit}</small>");
        html.Raw("</th>");
    }

    private static void WriteRow(Markup html, IReadOnlyList<Cell> cells)
    {
        var name = OutsideText.Label(cells[0].Text);
        html.Raw(OutsideText.HasLongWord(name) ? "<tr><th scope=\"row\" class=\"lg\">" : "<tr><th scope=\"row\">").Add($"{name}");
        if (cells[0].Note.Length > 0) html.Raw(" ");
        WriteNote(html, cells[0]);
        html.Raw("</th>");
        for (var i = 1; i < cells.Count; i++)
        {
            var classes = Classes(cells[i]);
            if (classes.Length == 0) html.Raw("<td>");
            else html.Add($"<td class=\"{classes}\">");
            if (!cells[i].IsEmpty) html.Add($"{cells[i].Text}");
            else if (cells[i].Note.Length == 0) html.Raw(Figures.Missing);
            WriteNote(html, cells[i]);
            html.Raw("</td>");
        }
        html.Raw("</tr>");
    }

    private static string Classes(Cell cell)
    {
        var classes = new List<string>();
        if (cell is { IsEmpty: true, Note.Length: 0 }) classes.Add("e muted-t");
        else if (cell.Tone is not Tone.Plain) classes.Add(ToneClass.Words(cell.Tone));
        if (OutsideText.HasLongWord(cell.Text ?? string.Empty) || OutsideText.HasLongWord(cell.Note)) classes.Add("lg");
        return string.Join(' ', classes);
    }

    private static void WriteNote(Markup html, Cell cell)
    {
        if (cell.Note.Length > 0) html.Add($"<small>{cell.Note}</small>");
    }

    // The heads as labels of the cards: once per table, not once per cell, which keeps a long table small.
    // The sheet has the rules that show them.
    private static Markup CardLabels(IReadOnlyList<Column> columns)
        => new Markup().Raw(string.Join(';', columns.Skip(1).Select((c, i) => string.Create(
            CultureInfo.InvariantCulture, $"--l{i + 2}:'{CssText(OutsideText.Cut(c.HeadWithUnit, OutsideText.LongestLabel))}'"))));

    // Everything but plain letters and digits becomes a CSS escape: no head can end the string or the element.
    private static string CssText(string text)
    {
        var css = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.IsAscii && (Rune.IsLetterOrDigit(rune) || rune.Value == ' ')) css.Append((char)rune.Value);
            else css.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:x} ");
        }
        return css.ToString();
    }
}
