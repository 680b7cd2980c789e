namespace Analytics.Notebooks.Look;

/// <summary>
/// Widths of text that no browser has set yet. System fonts differ, so this is the width in a wide one
/// (bold Verdana-like proportions): a label placed by it is never clipped, at worst it has air.
/// </summary>
internal static class TextWidth
{
    /// <summary>An upper estimate in pixels.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="fontPixels">Font size in pixels.</param>
    public static double Of(string text, double fontPixels) => fontPixels * text.Sum(Em);

    private static double Em(char c) => c switch
    {
        'i' or 'j' or 'l' or 'I' or '\'' or '|' or '.' or ',' or ':' or ';' or '!' => 0.4,
        ' ' or 'f' or 't' or 'r' or '(' or ')' => 0.45,
        'm' or 'w' or 'M' or 'W' or '@' or '%' => 1.0,
        '\u2009' or '\u202F' => 0.25,
        _ when char.IsAsciiDigit(c) || char.IsAsciiLetterLower(c) => 0.66,
        _ when c < 0x2E80 => 0.82,
        _ => 1.1,
    };
}
