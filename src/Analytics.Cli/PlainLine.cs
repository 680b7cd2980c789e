using System.Text;

namespace Analytics.Cli;

/// <summary>Text from a file as one line for a terminal: nothing in it moves the cursor or changes colours, and it is never long.</summary>
internal static class PlainLine
{
    private const int Longest = 60;

    /// <summary>The text, cut where it is very long.</summary>
    public static string Of(string text)
    {
        var line = Whole(text);
        return line.Length <= Longest ? line : line[..(Longest - 1)] + "…";
    }

    /// <summary>All of the text.</summary>
    public static string Whole(string text)
    {
        var line = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
            line.Append(Rune.GetUnicodeCategory(rune) is System.Globalization.UnicodeCategory.Control or System.Globalization.UnicodeCategory.Format
                or System.Globalization.UnicodeCategory.LineSeparator or System.Globalization.UnicodeCategory.ParagraphSeparator ? "·" : rune.ToString());
        return line.ToString();
    }
}
