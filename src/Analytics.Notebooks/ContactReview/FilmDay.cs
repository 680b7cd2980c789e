using System.Globalization;
using Analytics.Metrics.Trials;
using Analytics.Season;

namespace Analytics.Notebooks.ContactReview;

/// <summary>Which testing day with contact clips a review is about.</summary>
internal static class FilmDay
{
    /// <summary>The day; null when the season has no clip at all and none was asked for by date.</summary>
    /// <exception cref="SeasonException">A day that has no clip; the message lists those that have.</exception>
    public static Season.TestingDay? Choose(SeasonData season, string day)
    {
        Season.TestingDay[] filmed = [.. season.Days.Where(d => d.Athletes.Any(a => a.Of<ContactTrial>().Any()))];
        if (filmed.Length == 0) return null;
        if (day == "latest") return filmed[^1];
        var found = DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            ? filmed.FirstOrDefault(d => d.Date == date) : null;
        return found ?? throw new SeasonException(
            $"day is '{day}'; use \"latest\" or a testing day with a kept row of contact.csv: {string.Join(", ", filmed.Select(d => d.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)))}.");
    }
}
