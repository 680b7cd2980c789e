namespace Analytics.Metrics.Load;

/// <summary>One week of an athlete: load, jump contacts and sets lifted.</summary>
/// <param name="Load">Load of the week.</param>
/// <param name="Contacts">Jump contacts of the week.</param>
public sealed record TrainingWeek(WeekLoad Load, WeekContacts Contacts)
{
    /// <summary>First day of the week.</summary>
    public DateOnly Monday => Load.Monday;

    /// <summary>Sets lifted in the week; null when no set was written down.</summary>
    public VolumeLoad? Volume { get; init; }

    /// <summary>Sessions of the week.</summary>
    public int Sessions => Load.Sessions;

    /// <summary>The whole weeks, Monday to Sunday, of a period; weeks cut by its ends are left out, since their other days are not rest days.</summary>
    /// <param name="sessions">Sessions of one athlete.</param>
    /// <param name="from">First day of the period.</param>
    /// <param name="to">Day after its last day.</param>
    /// <param name="divisor">Divisor of the SD of the daily loads.</param>
    public static IReadOnlyList<TrainingWeek> WholeWeeks(IEnumerable<SessionWork> sessions, DateOnly from, DateOnly to, SdDivisor divisor)
    {
        ArgumentNullException.ThrowIfNull(sessions);
        var byWeek = sessions.ToLookup(s => WeekLoad.MondayOf(s.Date));
        var weeks = new List<TrainingWeek>();
        var first = WeekLoad.MondayOf(from);
        for (var monday = first < from ? first.AddDays(7) : first; monday.AddDays(7) <= to; monday = monday.AddDays(7))
            weeks.Add(new(WeekLoad.Of(monday, byWeek[monday], divisor), WeekContacts.Of(monday, byWeek[monday])) { Volume = Sets([.. byWeek[monday].SelectMany(s => s.Exercises)]) });
        return weeks;
    }

    private static VolumeLoad? Sets(List<ExerciseSets> exercises) => exercises.Count > 0 ? VolumeLoad.Of(exercises) : null;
}
