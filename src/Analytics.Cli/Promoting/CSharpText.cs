using System.Globalization;
using System.Text;

namespace Analytics.Cli.Promoting;

/// <summary>Values and texts as they are written in C#.</summary>
internal static class CSharpText
{
    private const int Widest = 150;

    /// <summary>A string literal.</summary>
    public static string Literal(string text)
    {
        var literal = new StringBuilder("\"");
        foreach (var c in text)
        {
            if (c is '"' or '\\') literal.Append('\\').Append(c);
            else if (char.IsControl(c) || c is '\u2028' or '\u2029') literal.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}");
            else literal.Append(c);
        }

        return literal.Append('"').ToString();
    }

    /// <summary>A number, so that the same one is read back.</summary>
    public static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A documentation comment of one summary, wrapped, with line feeds and a final one.</summary>
    /// <param name="text">Plain text.</param>
    /// <param name="margin">Spaces before it.</param>
    public static string Summary(string text, int margin)
    {
        var lines = Wrapped(text.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal)).ToList();
        var start = new string(' ', margin) + "/// ";
        return lines.Count == 1 ? $"{start}<summary>{lines[0]}</summary>\n"
            : string.Concat(lines.Prepend("<summary>").Append("</summary>").Select(l => start + l + "\n"));
    }

    private static IEnumerable<string> Wrapped(string text)
    {
        var line = new StringBuilder();
        foreach (var word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + word.Length >= Widest)
            {
                yield return line.ToString();
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        yield return line.ToString();
    }
}
