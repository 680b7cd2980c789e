namespace Analytics.Cli.Promoting;

/// <summary>The changelog with one more line.</summary>
internal static class ChangelogText
{
    /// <summary>Adds a line to the end of the newest version's list; null where the newest version does not end with a list.</summary>
    /// <param name="text">The changelog.</param>
    /// <param name="line">The line, without its mark.</param>
    public static string? With(string text, string line)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n').ToList();
        var first = lines.FindIndex(IsVersion);
        if (first < 0) return null;
        var end = lines.FindIndex(first + 1, IsVersion) is >= 0 and var next ? next : lines.Count;
        var last = lines.FindLastIndex(end - 1, end - first, l => l.Trim().Length > 0);
        if (!lines[last].StartsWith("- ", StringComparison.Ordinal) && !lines[last].StartsWith("  ", StringComparison.Ordinal)) return null;
        lines.Insert(last + 1, "- " + line);
        return string.Join('\n', lines);
    }

    private static bool IsVersion(string line) => line.StartsWith("## ", StringComparison.Ordinal);
}
