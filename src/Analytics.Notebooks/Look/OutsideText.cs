using System.Globalization;
using System.Text;

namespace Analytics.Notebooks.Look;

/// <summary>Makes text that people typed fit for a page: visible, bounded, and free of control characters.</summary>
internal static class OutsideText
{
    /// <summary>Longest label shown whole; a longer one ends in an ellipsis.</summary>
    public const int LongestLabel = 90;

    private const int LongestWord = 22;

    /// <summary>A label: blank becomes <c>(no name)</c>, a monster is cut.</summary>
    public static string Label(string? text)
        => string.IsNullOrWhiteSpace(text) ? "(no name)" : Cut(Visible(text.Trim()), LongestLabel);

    /// <summary>The text with control, direction-override and broken surrogate characters shown as U+FFFD.</summary>
    public static string Visible(string text)
    {
        if (!text.Any(c => char.IsControl(c) || char.IsSurrogate(c) || IsOverride(c) || c >= '\uFFFE')) return text;
        var shown = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value is '\n' or '\t' or '\r') shown.Append(' ');
            else if (Rune.IsControl(rune) || rune.IsBmp && (IsOverride((char)rune.Value) || rune.Value >= 0xFFFE)) shown.Append('\uFFFD');
            else shown.Append(rune.ToString());
        }
        return shown.ToString();
    }

    /// <summary>At most so many visible characters, with an ellipsis when cut.</summary>
    public static string Cut(string text, int longest)
    {
        var elements = new StringInfo(text.Length > longest * 8 ? text[..(longest * 8)] : text);
        return elements.LengthInTextElements <= longest && elements.String.Length == text.Length
            ? text
            : elements.SubstringByTextElements(0, Math.Min(longest - 1, elements.LengthInTextElements)) + "\u2026";
    }

    /// <summary>Whether a word is so long that it must be broken to leave room for its neighbours.</summary>
    public static bool HasLongWord(string text) => text.Length > LongestWord && text.Split(' ').Any(w => w.Length > LongestWord);

    // Embeddings, overrides and isolates left open would turn the neighbours' text round.
    private static bool IsOverride(char c) => c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
