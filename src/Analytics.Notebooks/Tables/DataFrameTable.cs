using System.Globalization;
using Analytics.Notebooks.Look;
using Microsoft.Data.Analysis;
using Microsoft.DotNet.Interactive.Formatting;

namespace Analytics.Notebooks.Tables;

/// <summary>A data frame as a table of the report, and as what a notebook shows for it.</summary>
public static class DataFrameTable
{
    private const int MostDecimals = 4;
    private const int NotebookCap = 50;

    /// <summary>A data frame as a table; numbers of a column share their decimals, at most four.</summary>
    /// <param name="frame">The data frame.</param>
    /// <param name="caption">What it shows; null gives its size.</param>
    /// <param name="cap">Rows shown at most; null for all.</param>
    public static DataTable Of(DataFrame frame, string? caption = null, int? cap = NotebookCap)
    {
        ArgumentNullException.ThrowIfNull(frame);
        caption ??= string.Create(CultureInfo.InvariantCulture, $"{frame.Rows.Count} rows, {frame.Columns.Count} columns");
        if (frame.Columns.Count == 0) return new DataTable(caption, [new Column("No columns")], []);
        var shown = (int)Math.Min(frame.Rows.Count, cap ?? int.MaxValue);
        var columns = frame.Columns.Select(c => Cells(c, shown)).ToArray();
        var heads = frame.Columns.Select(c => new Column(c.Name, c.IsNumericColumn()));
        return new DataTable(caption, heads, Enumerable.Range(0, shown).Select(i => columns.Select(c => c[i]).ToArray())) { Total = frame.Rows.Count };
    }

    /// <summary>
    /// Makes the running notebook show data frames as tables. The registration lasts until the formatters are
    /// reset, so a notebook calls it in its first cell.
    /// </summary>
    public static void Register()
    {
        Formatter.Register<DataFrame>((frame, writer) => writer.Write(Of(frame).ToHtml()), HtmlFormatter.MimeType);
        Formatter.Register<DataFrame>((frame, writer) => writer.Write(Of(frame).ToText()), PlainTextFormatter.MimeType);
        Formatter.SetPreferredMimeTypesFor(typeof(DataFrame), HtmlFormatter.MimeType, PlainTextFormatter.MimeType);
    }

    private static Cell[] Cells(DataFrameColumn column, int shown)
    {
        var values = Enumerable.Range(0, shown).Select(i => column[i]);
        if (!column.IsNumericColumn()) return [.. values.Select(v => new Cell(Text(v)))];
        var numbers = values.Select(v => v is null ? (double?)null : Convert.ToDouble(v, CultureInfo.InvariantCulture)).ToArray();
        var decimals = Enumerable.Range(0, MostDecimals).FirstOrDefault(d => numbers.All(n => IsShown(n, d)), MostDecimals);
        return [.. numbers.Select(n => new Cell(Figures.Plain(n, decimals)))];
    }

    private static bool IsShown(double? value, int decimals)
        => value is not { } number || !double.IsFinite(number) || Math.Abs(number - Math.Round(number, decimals)) <= Math.Abs(number) * 1e-12;

    private static string? Text(object? value) => value switch
    {
        null => null,
        DateTime day => day.ToString(day.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : "yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture),
        bool yes => yes ? "yes" : "no",
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString(),
    };
}
