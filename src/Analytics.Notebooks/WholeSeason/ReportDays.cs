using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>The testing days a season report looks at.</summary>
internal static class ReportDays
{
    /// <summary>The testing days from one to another, both included.</summary>
    /// <param name="season">The season.</param>
    /// <param name="from">A testing day as <c>yyyy-mm-dd</c>, or <c>first</c>.</param>
    /// <param name="to">A testing day as <c>yyyy-mm-dd</c>, or <c>latest</c>.</param>
    /// <exception cref="SeasonException">There is no such day, or they stand the wrong way round.</exception>
    public static IReadOnlyList<Season.TestingDay> Of(SeasonData season, string from, string to)
    {
        var days = DaySetting.DaysOf(season);
        var first = (from == "first" ? days[0] : DaySetting.Find(days, "from", from, "\"first\"")).Date;
        var last = (to == "latest" ? days[^1] : DaySetting.Find(days, "to", to, "\"latest\"")).Date;
        return first <= last ? [.. days.Where(d => d.Date >= first && d.Date <= last)]
            : throw new SeasonException($"'from' is {DaySetting.Iso(first)} and 'to' is {DaySetting.Iso(last)}; the first day cannot come after the last. Swap them.");
    }
}
