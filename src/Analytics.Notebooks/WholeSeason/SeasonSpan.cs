using System.Globalization;
using Analytics.Season;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>The testing days a season report looks at.</summary>
internal static class SeasonSpan
{
    /// <summary>The testing days from one to another, both included.</summary>
    /// <param name="season">The season.</param>
    /// <param name="from">A testing day as <c>yyyy-mm-dd</c>, or <c>first</c>.</param>
    /// <param name="to">A testing day as <c>yyyy-mm-dd</c>, or <c>latest</c>.</param>
    /// <exception cref="SeasonException">There is no such day, or they stand the wrong way round.</exception>
    public static IReadOnlyList<Season.TestingDay> Of(SeasonData season, string from, string to)
    {
        if (season.Days.Count == 0)
            throw new SeasonException("The season has no testing day with a kept result. Add a folder such as testing/2026-03-02 with body.csv, lifts.csv, jumps.csv or sprints.csv.");
        var first = Find(season.Days, "from", from, "first", season.Days[0].Date);
        var last = Find(season.Days, "to", to, "latest", season.Days[^1].Date);
        return first <= last ? [.. season.Days.Where(d => d.Date >= first && d.Date <= last)]
            : throw new SeasonException($"'from' is {Iso(first)} and 'to' is {Iso(last)}; the first day cannot come after the last. Swap them.");
    }

    private static DateOnly Find(IReadOnlyList<Season.TestingDay> days, string setting, string value, string word, DateOnly special)
        => value == word ? special
            : DateOnly.TryParseExact(value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) && days.Any(d => d.Date == date) ? date
            : throw new SeasonException($"{setting} is '{value}'; use \"{word}\" or one of these testing days: {string.Join(", ", days.Select(d => Iso(d.Date)))}.");

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
