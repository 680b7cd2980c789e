using Analytics.Notebooks.TestingDay;
using Analytics.Season;
using Analytics.Statistics.Change;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Who clearly lost in a headline measure at the latest testing day: health is asked about before a load goes up.</summary>
internal static class ClearLosses
{
    /// <summary>By player, in words; empty with fewer than two testing days up to the day.</summary>
    public static IReadOnlyDictionary<string, string> Of(SeasonData season, DateOnly today)
    {
        var days = season.Days.Where(d => d.Date <= today && d.Athletes.Any(a => a.Trials.Count > 0)).ToList();
        if (days.Count < 2) return new Dictionary<string, string>();
        var squad = new DayContext(season, new DayChoice(days[^1], days[^2]));
        return squad.Headlines.SelectMany(m => squad.Change(m).Athletes.Where(a => a.Verdict == Verdict.ClearLoss)
                .Select(a => (a.AthleteId, Text: $"{Words.Short(m)} {squad.Unit(m).ChangeText(a.Difference, a.Interval)} from {Words.ShortDate(days[^2].Date)} to {Words.ShortDate(days[^1].Date)}, clear loss")))
            .GroupBy(l => l.AthleteId).ToDictionary(g => g.Key, g => Words.List([.. g.Select(l => l.Text)]), StringComparer.Ordinal);
    }
}
