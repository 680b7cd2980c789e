using Analytics.Season;

namespace Analytics.Notebooks.TestingDay;

/// <summary>Which testing day a report is about and which one it looks back to.</summary>
/// <param name="Today">The day of the report.</param>
/// <param name="Before">The day compared with; null when there is none.</param>
internal sealed record DayChoice(Season.TestingDay Today, Season.TestingDay? Before)
{
    public static DayChoice From(SeasonData season, string day, string since)
    {
        var days = DaySetting.DaysOf(season);
        var today = day == "latest" ? days[^1] : DaySetting.Find(days, "day", day, "\"latest\"");
        Season.TestingDay[] earlier = [.. days.Where(d => d.Date < today.Date)];
        return new(today, since switch
        {
            "none" => null,
            "previous" or "first" when earlier.Length == 0 => null,
            "first" => earlier[0],
            "previous" => earlier[^1],
            _ => DaySetting.Find(earlier, "since", since, "\"previous\", \"first\", \"none\""),
        });
    }
}
