using System.Globalization;
using System.Text;
using Analytics.Runner;

namespace Analytics.Cli.Promoting;

/// <summary>Texts of a metric as they stand in source and documents: one line, nothing that cannot be seen.</summary>
internal static class PlainWords
{
    /// <summary>The text on one line, runs of white space as one space.</summary>
    /// <param name="what">What it is, for the message.</param>
    /// <param name="text">The text.</param>
    /// <exception cref="NotebookException">It holds characters that are not shown, which could make code look other than it is.</exception>
    public static string OneLine(string what, string text)
    {
        var line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        foreach (var rune in line.EnumerateRunes())
        {
            // A lone half of a pair is read as the replacement character.
            if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned || rune == Rune.ReplacementChar)
                throw new NotebookException(Fault.Usage, string.Create(CultureInfo.InvariantCulture, $"{what} holds a character that cannot be seen or read (U+{rune.Value:X4}): '{PlainLine.Of(line)}'. Type it again without."));
        }

        return line;
    }

    /// <summary>As above; with at least so many words.</summary>
    public static string Reason(string what, string text, int words)
    {
        var line = OneLine(what, text);
        return line.Split(' ').Length >= words ? line
            : throw new NotebookException(Fault.Usage, string.Create(CultureInfo.InvariantCulture, $"{what} '{PlainLine.Of(line)}' says too little to a reviewer; write {words} words or more."));
    }
}
