using Analytics.Metrics.Load;
using Analytics.Season;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>The stretch between two testing days in which training was written down, with every player's dose.</summary>
/// <param name="Before">The testing day at its start.</param>
/// <param name="After">The testing day at its end.</param>
/// <param name="Doses">What every player did in it.</param>
internal sealed record TrainedStretch(Season.TestingDay Before, Season.TestingDay After, IReadOnlyList<TrainingDose> Doses)
{
    /// <summary>The SD of the daily loads that monotony is made with; the papers do not say which, so it is said here.</summary>
    public const SdDivisor Divisor = SdDivisor.Sample;

    /// <summary>From the last testing day at or before the first session to the last testing day; null without sessions between two testing days.</summary>
    public static TrainedStretch? Of(SeasonData data, IReadOnlyList<Season.TestingDay> days)
    {
        if (days.Count < 2) return null;
        var last = days[^1];
        var within = data.Sessions.Where(s => s.Date >= days[0].Date && s.Date < last.Date).ToList();
        if (within.Count == 0) return null;
        var first = within.Min(s => s.Date);
        var before = days.Last(d => d.Date <= first);
        return before.Date == last.Date ? null : new(before, last, SeasonDoses.Between(data, before.Date, last.Date, Divisor));
    }
}
