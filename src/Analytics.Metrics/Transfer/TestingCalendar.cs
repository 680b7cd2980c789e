using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Transfer;

/// <summary>The testing days in order of time, and which of them are one occasion.</summary>
internal sealed class TestingCalendar
{
    private readonly Dictionary<DateOnly, int> _days = [];
    private readonly int[] _occasion;
    private readonly int[] _block;
    private readonly double[] _time;

    // A measure stands in many pairs; its means are found once, all occasions in one pass.
    private readonly Dictionary<object, Dictionary<int, Dictionary<string, (double Mean, int Days)>>> _means = [];

    public TestingCalendar(IReadOnlyList<IReadOnlyList<AthleteDay>> days, IReadOnlyList<RepeatDays> retests)
    {
        // A day's date is the one most of its athletes have; those tested a day later belong to it all the same.
        var dated = days.Where(d => d.Count > 0).Select(d => (Day: d, Date: d.GroupBy(a => a.Date).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).First().Key))
            .GroupBy(d => d.Date).OrderBy(g => g.Key).ToList();
        Dates = [.. dated.Select(g => g.Key)];
        for (var i = 0; i < dated.Count; i++) _days.TryAdd(dated[i].Key, i);
        for (var i = 0; i < dated.Count; i++)
        {
            foreach (var date in dated[i].SelectMany(d => d.Day).Select(a => a.Date)) _days.TryAdd(date, i);
        }

        var occasions = SeasonPeriods.Occasions(Dates, retests);
        _occasion = [.. Dates.Select(occasions.NumberOf)];
        var periods = SeasonPeriods.Of(Dates, retests);
        _block = [.. Dates.Select((date, day) => periods.AreCalendar ? periods.NumberOf(date) : day)];
        _time = [.. Dates.Select((_, day) => Time(day)).Zip(_block).GroupBy(d => d.Second).OrderBy(g => g.Key).Select(g => g.Average(d => d.First))];
        Blocks = periods.AreCalendar ? periods.Rule : "";
        Retest = retests.Select(r => r.Occasions.SelectMany(o => o).Select(a => DayOf(a.Date)).Where(d => d >= 0).Distinct().Order().Take(2).ToArray()).FirstOrDefault(r => r.Length == 2);
    }

    public IReadOnlyList<DateOnly> Dates { get; }

    /// <summary>How testing days are taken together where there are too many for an effect each, in words; empty when every day stands alone.</summary>
    public string Blocks { get; }

    /// <summary>The block of a testing day: the day itself unless there are too many of them.</summary>
    public int BlockOf(int day) => _block[day];

    /// <summary>Where a block stands, in days since the first testing day.</summary>
    public double TimeOf(int block) => _time[block];

    /// <summary>The first pair of retest days; null without one.</summary>
    public int[]? Retest { get; }

    /// <summary>Number of the testing day of a date; −1 for a date of none.</summary>
    public int DayOf(DateOnly date) => _days.GetValueOrDefault(date, -1);

    /// <summary>Days since the first testing day.</summary>
    public double Time(int day) => Dates[day].DayNumber - Dates[0].DayNumber;

    public int Occasions => _occasion.Length == 0 ? 0 : _occasion[^1] + 1;

    /// <summary>Each athlete's mean over the days of an occasion.</summary>
    public Dictionary<string, (double Mean, int Days)> On(int occasion, IReadOnlyDictionary<(string Athlete, int Day), double> turned)
    {
        if (!_means.TryGetValue(turned, out var known))
        {
            known = _means[turned] = turned.GroupBy(v => _occasion[v.Key.Day]).ToDictionary(o => o.Key, o => o.GroupBy(v => v.Key.Athlete, StringComparer.Ordinal)
                .ToDictionary(g => g.Key, g => (g.Average(v => v.Value), g.Count()), StringComparer.Ordinal));
        }

        return known.GetValueOrDefault(occasion) ?? [];
    }

    /// <summary>Each athlete's mean over the days of the first occasion the measure was taken on.</summary>
    public Dictionary<string, (double Mean, int Days)> Starts(IReadOnlyDictionary<(string Athlete, int Day), double> turned)
        => turned.Count == 0 ? [] : On(turned.Keys.Min(k => _occasion[k.Day]), turned);
}
