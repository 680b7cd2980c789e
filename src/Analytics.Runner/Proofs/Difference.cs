namespace Analytics.Runner.Proofs;

/// <summary>Something a report says otherwise than it should.</summary>
/// <param name="Place">Where it stands, in words.</param>
/// <param name="Reported">What the report says there; empty when it says nothing.</param>
/// <param name="Expected">What it should say; empty when it should say nothing.</param>
public sealed record Difference(string Place, string Reported, string Expected)
{
    /// <summary>Name of the row where it stands in a table; else empty.</summary>
    public string Row { get; init; } = "";

    /// <summary>Head of the column where it stands in a table that has one; else empty.</summary>
    public string Column { get; init; } = "";

    private const int Around = 30;
    private const int Longest = 160;

    /// <summary>A difference in a longer text, cut to the surroundings of what differs.</summary>
    /// <param name="place">Where it stands, in words.</param>
    /// <param name="reported">The text of the report.</param>
    /// <param name="expected">The text it should be.</param>
    public static Difference InText(string place, string reported, string expected)
    {
        var start = reported.AsSpan().CommonPrefixLength(expected);
        var end = 0;
        while (end < Math.Min(reported.Length, expected.Length) - start && reported[^(end + 1)] == expected[^(end + 1)])
            end++;
        return new Difference(place, Piece(reported, start, end), Piece(expected, start, end));
    }

    private static string Piece(string text, int start, int end)
    {
        int from = Math.Max(0, start - Around), to = Math.Min(text.Length, text.Length - end + Around);
        // Whole words and numbers, so that no digit is lost at the ends.
        while (from > 0 && start - from < 2 * Around && !char.IsWhiteSpace(text[from - 1]))
            from--;
        while (to < text.Length && to - (text.Length - end) < 2 * Around && !char.IsWhiteSpace(text[to]))
            to++;
        var piece = text[from..Math.Min(to, from + Longest)];
        return (from > 0 ? "…" : "") + piece + (from + piece.Length < text.Length ? "…" : "");
    }
}
