using System.Globalization;
using Analytics.Season;

namespace Analytics.Notebooks.TestingDay;

/// <summary>Reads settings that name a testing day.</summary>
internal static class DaySetting
{
    /// <summary>The testing days of a season.</summary>
    /// <exception cref="SeasonException">There are none.</exception>
    public static IReadOnlyList<Season.TestingDay> DaysOf(SeasonData season) => season.Days.Count > 0 ? season.Days
        : throw new SeasonException("The season has no testing day with a kept result. Add a folder such as testing/2026-03-02 with body.csv, lifts.csv, jumps.csv or sprints.csv.");

    /// <summary>The day of a date.</summary>
    /// <param name="days">The days that may be named.</param>
    /// <param name="setting">Name of the setting.</param>
    /// <param name="value">Its value, <c>yyyy-mm-dd</c>.</param>
    /// <param name="words">The words it takes besides, in quotes; the caller has looked for them.</param>
    /// <exception cref="SeasonException">There is no such day; the message lists those there are.</exception>
    public static Season.TestingDay Find(IReadOnlyList<Season.TestingDay> days, string setting, string value, string words)
        => (DateOnly.TryParseExact(value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? days.FirstOrDefault(d => d.Date == date) : null)
            ?? throw new SeasonException($"{setting} is '{value}'; use {words} or one of these testing days: {(days.Count == 0 ? "(none)" : string.Join(", ", days.Select(d => Iso(d.Date))))}.");

    public static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
