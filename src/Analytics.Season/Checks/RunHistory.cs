using Analytics.Metrics.Trials;

namespace Analytics.Season.Checks;

/// <summary>The runs of each athlete by day, for one timing and start.</summary>
internal sealed class RunHistory
{
    /// <summary>From this many days on, leaving one out no longer moves the curve enough to matter.</summary>
    private const int ManyDays = 7;

    private readonly Dictionary<string, SortedDictionary<DateOnly, List<SprintTrial>>> athletes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, RunCurve?> curves = new(StringComparer.Ordinal);

    public RunHistory(IEnumerable<(DateOnly Day, SprintTrial Run)> runs)
    {
        foreach (var (day, run) in runs)
        {
            if (!athletes.TryGetValue(run.AthleteId, out var days)) athletes.Add(run.AthleteId, days = []);
            if (!days.TryGetValue(day, out var list)) days.Add(day, list = []);
            list.Add(run);
        }
    }

    /// <summary>The athletes of a day who have a curve from other days.</summary>
    public IEnumerable<DayRuns> On(DateOnly day)
        => from athlete in athletes
           where athlete.Value.ContainsKey(day)
           let others = Others(athlete.Key, athlete.Value, day)
           where others is not null
           select new DayRuns(athlete.Value[day], others, athlete.Value.Keys.Where(d => d != day).Min(d => Math.Abs(d.DayNumber - day.DayNumber)));

    /// <summary>Takes a day out, once it is known to be wrong.</summary>
    public void Remove(DateOnly day)
    {
        foreach (var days in athletes.Values) days.Remove(day);
        curves.Clear();
    }

    private RunCurve? Others(string id, SortedDictionary<DateOnly, List<SprintTrial>> days, DateOnly day)
    {
        if (days.Count < ManyDays) return RunCurve.Of(days.Where(d => d.Key != day).SelectMany(d => d.Value));
        if (!curves.TryGetValue(id, out var curve)) curves[id] = curve = RunCurve.Of(days.Values.SelectMany(d => d));
        return curve;
    }
}

/// <summary>One athlete's runs of a day.</summary>
/// <param name="Runs">The runs.</param>
/// <param name="Others">His curve from other days.</param>
/// <param name="DaysApart">Days to the nearest of them.</param>
internal sealed record DayRuns(IReadOnlyList<SprintTrial> Runs, RunCurve Others, int DaysApart);
