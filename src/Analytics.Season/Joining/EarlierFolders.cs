namespace Analytics.Season.Joining;

/// <summary>The folders of joined seasons, oldest first, the latest at the end.</summary>
internal static class EarlierFolders
{
    /// <summary>Most seasons that are joined.</summary>
    public const int Most = 20;

    /// <summary>Opens the folders.</summary>
    /// <param name="season">The latest.</param>
    /// <param name="earlier">The others, separated by semicolons; empty for none.</param>
    /// <exception cref="SeasonException">A folder is missing, named twice, or there are too many.</exception>
    public static IReadOnlyList<SeasonSource> Open(string season, string earlier)
    {
        var named = earlier.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (named.Length >= Most)
            throw new SeasonException(FormattableString.Invariant($"{named.Length} earlier seasons are named; at most {Most - 1} can be joined. Name fewer."));
        List<SeasonSource> sources = [.. named.Select(n => SeasonSource.Open(n, isLatest: false)), SeasonSource.Open(season, isLatest: true)];
        var comparer = OperatingSystem.IsLinux() ? StringComparer.Ordinal : StringComparer.OrdinalIgnoreCase;
        if (sources.GroupBy(s => s.Folder.Root, comparer).FirstOrDefault(g => g.Count() > 1) is not { } twin) return sources;
        throw new SeasonException(twin.Last().IsLatest
            ? $"The season '{season}' cannot be joined with itself, but it is named among the earlier seasons too ('{twin.First().Named}'). Name only seasons before it."
            : $"The season folder '{twin.First().Named}' is named twice among the earlier seasons. Name each once.");
    }
}
