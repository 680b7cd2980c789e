using Analytics.Notebooks.Blocks;
using Analytics.Statistics.Results;
using Microsoft.DotNet.Interactive.Formatting;

namespace Analytics.Notebooks.Tables;

/// <summary>Results of the statistics library in the look of the reports.</summary>
public static class ResultTable
{
    /// <summary>A result as a block: its table, then method, what it rests on and remarks.</summary>
    /// <param name="result">The result.</param>
    public static ReportBlock Of(Result result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var sheet = result.Sheet();
        return new Together([TableOf(sheet), new Note($"Method: {sheet.Method}. From: {sheet.Basis}."), .. sheet.Remarks.Select(r => new Note(r))]);
    }

    /// <summary>The figures of a result as a table of the report; method and remarks stand in <see cref="Of"/> only.</summary>
    /// <param name="result">The result.</param>
    public static DataTable ToTable(this Result result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return TableOf(result.Sheet());
    }

    /// <summary>
    /// Makes the running notebook show results in the look of the reports instead of as plain tables. The registration
    /// lasts until the formatters are reset, so a notebook calls it in its first cell.
    /// </summary>
    public static void Register()
    {
        Formatter.Register<Result>((result, writer) => writer.Write(Of(result).ToHtml()), HtmlFormatter.MimeType);
        Formatter.Register<Result>((result, writer) => writer.Write(result.ToString()), PlainTextFormatter.MimeType);
        Formatter.SetPreferredMimeTypesFor(typeof(Result), HtmlFormatter.MimeType, PlainTextFormatter.MimeType);
    }

    private static DataTable TableOf(ResultSheet sheet)
    {
        var cells = SheetColumns.Of(sheet);
        var heads = cells.Heads.Select((head, i) => new Column(i == 0 ? "figure" : head, i > 0 && head != SheetColumns.NoteHead));
        return new DataTable(sheet.Title, heads, cells.Rows.Select(row => row.Select(text => new Cell(text)).ToArray()));
    }
}
