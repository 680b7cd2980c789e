using Analytics.Metrics.Profile;

namespace Analytics.Metrics.Seasons;

/// <summary>A stretch of the season within which no true change is looked for.</summary>
/// <param name="Number">Position, from 0.</param>
/// <param name="From">First testing day in it.</param>
/// <param name="To">Last testing day in it.</param>
/// <param name="TestingDays">Testing days in it.</param>
/// <param name="Day">Middle of its testing days, in days since the first of the season: where it stands on the time axis and in the model.</param>
public sealed record SeasonPeriod(int Number, DateOnly From, DateOnly To, int TestingDays, double Day);

/// <summary>The testing days of a season taken together into periods.</summary>
public sealed class SeasonPeriods
{
    /// <summary>Days from the first within which testing days are one occasion: no true change is expected within a week (our choice, no source).</summary>
    public const int SameOccasionDays = 6;

    /// <summary>Most periods for which a mean of their own is estimated (our choice): a year of monthly tests.</summary>
    public const int Most = 12;

    private static readonly int[] s_months = [1, 2, 3, 4, 6, 12, 24, 36, 60, 120];
    private readonly Dictionary<DateOnly, int> _numbers = [];

    private SeasonPeriods(IEnumerable<IGrouping<int, DateOnly>> blocks, string rule, bool areCalendar)
    {
        (Rule, AreCalendar) = (rule, areCalendar);
        var all = new List<SeasonPeriod>();
        var first = 0;
        foreach (var block in blocks)
        {
            List<DateOnly> dates = [.. block];
            if (all.Count == 0) first = dates[0].DayNumber;
            foreach (var date in dates) _numbers[date] = all.Count;
            all.Add(new(all.Count, dates[0], dates[^1], dates.Count, dates.Average(d => d.DayNumber) - first));
        }

        All = all;
    }

    /// <summary>The periods in order of time.</summary>
    public IReadOnlyList<SeasonPeriod> All { get; }

    /// <summary>How the days were taken together, in words a report can print.</summary>
    public string Rule { get; }

    /// <summary>Whether months were taken together because there were too many testing days.</summary>
    public bool AreCalendar { get; }

    /// <summary>Number of the period of a date of <see cref="SeasonValues.Dates"/>.</summary>
    /// <param name="date">The date.</param>
    public int NumberOf(DateOnly date) => _numbers[date];

    /// <summary>Occasions: testing days of one retest, or within a week of the first, are one.</summary>
    /// <param name="dates">Testing days, rising, each once.</param>
    /// <param name="retests">Retest days of the season.</param>
    public static SeasonPeriods Occasions(IReadOnlyList<DateOnly> dates, IReadOnlyList<RepeatDays> retests)
    {
        ArgumentNullException.ThrowIfNull(dates);
        ArgumentNullException.ThrowIfNull(retests);
        var block = new Dictionary<DateOnly, int>();
        for (var i = 0; i < retests.Count; i++)
            foreach (var date in retests[i].Occasions.SelectMany(o => o.Select(a => a.Date).Distinct())) block[date] = i;

        var (number, start) = (-1, default(DateOnly));
        var numbered = new List<(DateOnly Date, int Number)>();
        foreach (var date in dates)
        {
            var together = number >= 0
                && (date.DayNumber - start.DayNumber <= SameOccasionDays || (block.TryGetValue(date, out var own) && block.TryGetValue(start, out var first) && own == first));
            if (!together) (number, start) = (number + 1, date);
            numbered.Add((date, number));
        }

        var one = numbered.Count > number + 1;
        return new(
            numbered.GroupBy(n => n.Number, n => n.Date),
            "Each testing day has a mean of its own" + (one ? "; testing days of one retest or within a week are one occasion, since no true change is expected between them." : "."),
            areCalendar: false);
    }

    /// <summary>The periods of a trend: the occasions, or blocks of months when there are more than <see cref="Most"/> of them.</summary>
    /// <param name="dates">Testing days, rising, each once.</param>
    /// <param name="retests">Retest days of the season.</param>
    public static SeasonPeriods Of(IReadOnlyList<DateOnly> dates, IReadOnlyList<RepeatDays> retests)
    {
        var occasions = Occasions(dates, retests);
        if (occasions.All.Count <= Most) return occasions;
        var first = Month(dates[0]);
        var months = s_months.First(m => m == s_months[^1] || dates.Select(d => (Month(d) - first) / m).Distinct().Count() <= Most);
        return new(
            dates.GroupBy(d => (Month(d) - first) / months),
            FormattableString.Invariant(
                $"{occasions.All.Count} occasions are too many for a mean each; they are taken together by {(months == 1 ? "month" : $"blocks of {months} months")} from {dates[0]:MMMM yyyy}, and an athlete's values within one are averaged."),
            areCalendar: true);
    }

    private static int Month(DateOnly date) => (date.Year * 12) + date.Month - 1;
}
