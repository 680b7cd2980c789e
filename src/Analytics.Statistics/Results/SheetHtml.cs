using System.Net;
using System.Text;

namespace Analytics.Statistics.Results;

/// <summary>A sheet as an HTML table.</summary>
internal static class SheetHtml
{
    public static string Of(ResultSheet sheet)
    {
        var cells = SheetColumns.Of(sheet);
        var html = new StringBuilder("<table><caption>").Append(Escaped(sheet.Title)).Append("</caption><thead><tr>");
        foreach (var head in cells.Heads)
            html.Append(head.Length == 0 ? "<td></td>" : $"<th scope=\"col\">{Escaped(head)}</th>");
        html.Append("</tr></thead><tbody>");
        foreach (var row in cells.Rows)
        {
            html.Append("<tr><th scope=\"row\">").Append(Escaped(row[0])).Append("</th>");
            foreach (var cell in row.Skip(1)) html.Append("<td>").Append(Escaped(cell)).Append("</td>");
            html.Append("</tr>");
        }

        html.Append("</tbody></table><p>Method: ").Append(Escaped(sheet.Method)).Append("<br>From: ").Append(Escaped(sheet.Basis)).Append("</p>");
        foreach (var remark in sheet.Remarks) html.Append("<p>").Append(Escaped(remark)).Append("</p>");
        return html.ToString();
    }

    private static string Escaped(string text) => WebUtility.HtmlEncode(text);
}
