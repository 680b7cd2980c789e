using System.Text;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>A table of the document, line by line.</summary>
internal static class MarkdownTable
{
    public static string Of(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows)
    {
        var text = new StringBuilder();
        Line(text, heads);
        Line(text, [.. heads.Select(_ => "---")]);
        foreach (var row in rows) Line(text, row);
        return text.Append('\n').ToString();
    }

    /// <summary>A name of a case or figure as code, safe inside a table.</summary>
    public static string Code(string name) => $"`{name.Replace("|", "\\|", StringComparison.Ordinal)}`";

    /// <summary>Words, safe inside a table.</summary>
    public static string Words(string text) => text.Replace("|", "\\|", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace('\n', ' ');

    private static void Line(StringBuilder text, IEnumerable<string> cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");
}
