namespace Analytics.Season.Checks;

/// <summary>All readings of one measure: what each athlete did on each day, and what the squad does.</summary>
internal sealed class MeasureHistory
{
    /// <summary>Fewest athletes that make a squad or group to compare with.</summary>
    public const int FewestAthletes = 5;

    /// <summary>From this many days on, leaving one out no longer moves the middle value enough to matter.</summary>
    private const int ManyDays = 7;

    private readonly Dictionary<string, SortedDictionary<int, List<Reading>>> athletes = new(StringComparer.Ordinal);
    private readonly Dictionary<(string AthleteId, int Day), double> ofDay = [];
    private readonly Dictionary<string, double> levels = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> groups = new(StringComparer.Ordinal);
    private readonly Func<string, string> groupOf;
    private double? squad;

    public MeasureHistory(IEnumerable<Reading> readings, bool best, Func<string, string> groupOf)
    {
        this.groupOf = groupOf;
        foreach (var reading in readings)
        {
            var id = reading.Source.Trial.AthleteId;
            if (!athletes.TryGetValue(id, out var days)) athletes.Add(id, days = []);
            if (!days.TryGetValue(reading.Day, out var list)) days.Add(reading.Day, list = []);
            list.Add(reading);
        }

        foreach (var (id, day, list) in AthleteDays) ofDay[(id, day)] = best ? list.Max(r => r.Value) : Median(list.Select(r => r.Value));
        Summarise();
    }

    /// <summary>Each athlete and day with its readings.</summary>
    public IEnumerable<(string AthleteId, int Day, IReadOnlyList<Reading> Readings)> AthleteDays
        => athletes.SelectMany(a => a.Value.Select(d => (a.Key, d.Key, (IReadOnlyList<Reading>)d.Value)));

    /// <summary>The value that stands for a day of an athlete.</summary>
    public double OfDay(string athleteId, int day) => ofDay[(athleteId, day)];

    /// <summary>How many other days the athlete has, and the middle value of them; NaN when there is none.</summary>
    public (int Count, double Level) OtherDays(string athleteId, int day)
    {
        var own = athletes[athleteId];
        var count = own.Count - (own.ContainsKey(day) ? 1 : 0);
        if (count is 0) return (0, double.NaN);
        return (count, own.Count >= ManyDays ? levels[athleteId] : Median(own.Keys.Where(d => d != day).Select(d => ofDay[(athleteId, d)])));
    }

    /// <summary>The middle value of the athlete's group, or of the squad where the group is small; null when that is small too.</summary>
    public double? Usual(string athleteId) => groups.TryGetValue(groupOf(athleteId), out var group) ? group : squad;

    /// <summary>Takes a day out, once it is known to be wrong as a whole.</summary>
    public void Remove(int day)
    {
        foreach (var days in athletes.Values) days.Remove(day);
        Summarise();
    }

    public static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted.Count % 2 is 1 ? sorted[sorted.Count / 2] : (sorted[sorted.Count / 2 - 1] + sorted[sorted.Count / 2]) / 2;
    }

    private void Summarise()
    {
        groups.Clear();
        levels.Clear();
        foreach (var (id, days) in athletes.Where(a => a.Value.Count > 0)) levels[id] = Median(days.Keys.Select(d => ofDay[(id, d)]));
        squad = levels.Count >= FewestAthletes ? Median(levels.Values) : null;
        foreach (var group in levels.GroupBy(l => groupOf(l.Key)).Where(g => g.Count() >= FewestAthletes)) groups[group.Key] = Median(group.Select(l => l.Value));
    }
}
