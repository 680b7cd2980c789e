namespace Analytics.Metrics.Load;

/// <summary>Load of one day.</summary>
/// <param name="Date">The day.</param>
/// <param name="KnownAu">Sum of the loads that are known, AU; 0 on a day without sessions.</param>
/// <param name="Sessions">Sessions of the day.</param>
/// <param name="Unknown">Of these, sessions without rating or minutes.</param>
public sealed record DayLoad(DateOnly Date, double KnownAu, int Sessions, int Unknown)
{
    /// <summary>Load of the day in AU; null when a session's load is not known.</summary>
    public double? LoadAu => Unknown == 0 ? KnownAu : null;

    internal static DayLoad Of(DateOnly date, IReadOnlyList<SessionWork> sessions)
        => new(date, sessions.Sum(s => s.LoadAu ?? 0), sessions.Count, sessions.Count(s => s.LoadAu is null));
}
