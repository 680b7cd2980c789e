using System.Buffers;

namespace Analytics.Season.Cells;

/// <summary>
/// Text as a cell of a file that spreadsheets open. A text that a spreadsheet would take for a formula (it begins with =, +, -, @, a tab or a carriage return) gets an
/// apostrophe before it, and so does one that already has such apostrophes, so that <see cref="Read"/> gives back what was written.
/// </summary>
public static class SheetCell
{
    private const char Guard = '\'';

    private static readonly SearchValues<char> s_quoted = SearchValues.Create(",;\"\t\r\n");

    /// <summary>The cell with its guard, in quotes where it holds a separator, a quote or a line break.</summary>
    /// <param name="text">The text.</param>
    public static string Write(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var guarded = IsFormula(text.TrimStart(Guard)) ? Guard + text : text;
        return guarded.AsSpan().IndexOfAny(s_quoted) < 0 && guarded.Trim().Length == guarded.Length ? guarded : $"\"{guarded.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    /// <summary>The text of a cell without the guard.</summary>
    /// <param name="cell">The cell, without quotes.</param>
    public static string Read(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return cell.StartsWith(Guard) && IsFormula(cell.TrimStart(Guard)) ? cell[1..] : cell;
    }

    private static bool IsFormula(string text) => text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r';
}
