using System.Text.RegularExpressions;

namespace Analytics.Season.Cells;

/// <summary>
/// Marks within a message what came from a cell or a file name, and what names an athlete, so that it can be taken out where a season is shared without names; everything else in a message is the kit's own words.
/// The marks are control characters, which no cell that is shown can hold. They never leave this library.
/// </summary>
internal static partial class CellMarks
{
    private const char Open = '\u0002', Close = '\u0003', Who = '\u0001';

    /// <summary>Marks text of a cell, a file name or a message of the system.</summary>
    public static string Text(string text) => text.Length is 0 ? "" : $"{Open}{text}{Close}";

    /// <summary>Marks an identifier or a name, on one line.</summary>
    public static string Person(string text) => text.Length is 0 ? "" : $"{Open}{Who}{CellText.OneLine(text)}{Close}";

    /// <summary>An athlete as messages call him: P001 (Ada Stone).</summary>
    public static string Athlete(Athlete athlete) => $"{Person(athlete.Id)} ({Person(athlete.Name)})";

    /// <summary>The message without marks.</summary>
    public static string Strip(string message) => message.AsSpan().IndexOfAny(Open, Close) < 0 ? message : Mark().Replace(message, "${text}");

    /// <summary>The message with other text in the place of what is marked.</summary>
    /// <param name="message">The message.</param>
    /// <param name="text">What to write for text of a cell.</param>
    /// <param name="person">What to write for an identifier or a name; a name in brackets behind its identifier falls away.</param>
    public static string Replace(string message, Func<string, string> text, Func<string, string> person)
        => message.AsSpan().IndexOfAny(Open, Close) < 0 ? message : Mark().Replace(Named().Replace(message, "${id}"), m => m.Groups["who"].Length > 0 ? person(m.Groups["text"].Value) : text(m.Groups["text"].Value));

    [GeneratedRegex("\u0002(?<who>\u0001?)(?<text>[^\u0003]*)\u0003")]
    private static partial Regex Mark();

    [GeneratedRegex("(?<id>\u0002\u0001[^\u0003]*\u0003) \\(\u0002\u0001[^\u0003]*\u0003\\)")]
    private static partial Regex Named();
}
