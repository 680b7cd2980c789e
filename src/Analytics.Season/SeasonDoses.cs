using Analytics.Metrics.Load;

namespace Analytics.Season;

/// <summary>Training load of a season's athletes, from its sessions.</summary>
public static class SeasonDoses
{
    /// <summary>What every athlete did between two days, by identifier; who has no session is there too, with nothing known.</summary>
    /// <param name="season">The season.</param>
    /// <param name="from">First day, as a testing day: sessions on it are taken to follow the test.</param>
    /// <param name="to">Day after the last, as the next testing day.</param>
    /// <param name="divisor">Divisor of the SD of the daily loads.</param>
    /// <exception cref="ArgumentException">The second day is not later.</exception>
    public static IReadOnlyList<TrainingDose> Between(SeasonData season, DateOnly from, DateOnly to, SdDivisor divisor)
    {
        ArgumentNullException.ThrowIfNull(season);
        var sessions = season.Sessions.ToLookup(s => s.AthleteId, StringComparer.Ordinal);
        return [.. season.Athletes.Select(a => TrainingDose.Of(a.Id, sessions[a.Id].Select(s => s.Work), from, to, divisor))];
    }
}
