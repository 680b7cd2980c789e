using System.Globalization;
using Analytics.Season;

namespace Analytics.Notebooks.TestingDay;

/// <summary>Which testing day a report is about and which one it looks back to.</summary>
/// <param name="Today">The day of the report.</param>
/// <param name="Before">The day compared with; null when there is none.</param>
internal sealed record DayChoice(Season.TestingDay Today, Season.TestingDay? Before)
{
    public static DayChoice From(SeasonData season, string day, string since)
    {
        var days = season.Days;
        if (days.Count == 0)
            throw new SeasonException("The season has no testing day with a kept result. Add a folder such as testing/2026-03-02 with body.csv, lifts.csv, jumps.csv or sprints.csv.");
        var today = Find(days, "day", day, "latest", _ => days[^1]);
        Season.TestingDay[] earlier = [.. days.Where(d => d.Date < today.Date)];
        var before = since switch
        {
            "none" => null,
            _ when earlier.Length == 0 && since is "previous" or "first" => null,
            "first" => earlier[0],
            _ => Find(earlier, "since", since, "previous", d => d[^1]),
        };
        return new(today, before);
    }

    private static Season.TestingDay Find(
        IReadOnlyList<Season.TestingDay> days, string setting, string value, string word, Func<IReadOnlyList<Season.TestingDay>, Season.TestingDay> special)
    {
        if (value == word && days.Count > 0) return special(days);
        var found = DateOnly.TryParseExact(value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            ? days.FirstOrDefault(d => d.Date == date) : null;
        return found ?? throw new SeasonException(
            $"{setting} is '{value}'; use \"{word}\"{(setting == "since" ? ", \"first\", \"none\"" : "")} or one of these testing days: "
            + (days.Count == 0 ? "(none)" : string.Join(", ", days.Select(d => d.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)))) + ".");
    }
}
