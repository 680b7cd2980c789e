namespace Analytics.Season.Checks;

/// <summary>All readings of one measure: what each athlete did on each day, and what the squad does.</summary>
internal sealed class MeasureHistory(MeasureKey key, Func<string, string> groupOf)
{
    /// <summary>Fewest athletes that make a squad or group to compare with.</summary>
    public const int FewestAthletes = 5;

    private readonly Dictionary<string, AthleteHistory> athletes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> groups = new(StringComparer.Ordinal);
    private double? squad;

    /// <summary>The measure.</summary>
    public MeasureKey Key => key;

    /// <summary>The athletes, in the order first met.</summary>
    public IReadOnlyCollection<AthleteHistory> Athletes => athletes.Values;

    /// <summary>Adds a reading; days must come in order.</summary>
    public void Add(int day, in Reading reading)
    {
        var id = reading.Trial.AthleteId;
        if (!athletes.TryGetValue(id, out var athlete)) athletes.Add(id, athlete = new AthleteHistory(id));
        athlete.Add(day, reading);
    }

    /// <summary>Works out levels, once all readings are in.</summary>
    public void Seal()
    {
        foreach (var athlete in athletes.Values) athlete.Seal(key.Rule.BestOfDay);
        Summarise();
    }

    /// <summary>The middle value of the athlete's group, or of the squad where the group is small; null when that is small too.</summary>
    public double? Usual(string athleteId) => groups.TryGetValue(groupOf(athleteId), out var group) ? group : squad;

    /// <summary>Takes a day out, once it is known to be wrong as a whole.</summary>
    public void Remove(int day)
    {
        foreach (var athlete in athletes.Values) athlete.Remove(day);
        Summarise();
    }

    private void Summarise()
    {
        groups.Clear();
        var known = athletes.Values.Where(a => a.Days.Count > 0).ToList();
        squad = known.Count >= FewestAthletes ? Middle.Of(known.Select(a => a.Level)) : null;
        foreach (var group in known.GroupBy(a => groupOf(a.AthleteId)).Where(g => g.Count() >= FewestAthletes)) groups[group.Key] = Middle.Of(group.Select(a => a.Level));
    }
}
