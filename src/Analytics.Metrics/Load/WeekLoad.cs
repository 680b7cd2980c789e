using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Metrics.Load;

/// <summary>
/// Load of one athlete over a week, Monday to Sunday: monotony = mean of the daily loads / their SD, strain = total × monotony, rest days entered as 0 [foster1998].
/// </summary>
public sealed record WeekLoad : Result
{
    private WeekLoad()
    {
    }

    /// <summary>First day of the week.</summary>
    public DateOnly Monday => Days[0].Date;

    /// <summary>The seven days; a day without sessions is a rest day of load 0.</summary>
    public required IReadOnlyList<DayLoad> Days { get; init; }

    /// <summary>Divisor of the SD.</summary>
    public required SdDivisor Divisor { get; init; }

    /// <summary>Sum of the loads that are known, AU: the total, or a lower bound of it when <see cref="Unknown"/> is above 0.</summary>
    public double KnownAu => Days.Sum(d => d.KnownAu);

    /// <summary>Sessions of the week.</summary>
    public int Sessions => Days.Sum(d => d.Sessions);

    /// <summary>Sessions without rating or minutes.</summary>
    public int Unknown => Days.Sum(d => d.Unknown);

    /// <summary>Total in AU; null when a session's load is not known, and in a week without sessions, of which nobody can tell whether it was rest or not written down.</summary>
    public double? TotalAu => Sessions > 0 && Unknown == 0 ? KnownAu : null;

    /// <summary>Mean daily load in AU; null without a total.</summary>
    public double? MeanAu => TotalAu / Days.Count;

    /// <summary>SD of the daily loads in AU with <see cref="Divisor"/>; 0 for seven equal days, null without a total.</summary>
    public double? SdAu => TotalAu is null ? null : AreEqual ? 0 : Moments.StandardDeviation([.. Days.Select(d => d.KnownAu)]) * Factor;

    /// <summary>Mean / SD; null where <see cref="NotComputable"/> says why.</summary>
    public double? Monotony => NotComputable is null ? MeanAu / SdAu : null;

    /// <summary>Total × monotony in AU; null where <see cref="NotComputable"/> says why.</summary>
    public double? StrainAu => TotalAu * Monotony;

    /// <summary>Why there is no monotony and no strain, in words; null when there are.</summary>
    public string? NotComputable => this switch
    {
        { Unknown: > 0 } => $"not computable: {Unknown} of {Sessions} {(Sessions == 1 ? "session" : "sessions")} without rating or minutes",
        { Sessions: 0 } => "not computable: no session in this week",
        { AreEqual: true } => "not computable: the same load on all seven days, so the SD is 0",
        _ => null,
    };

    // Products of ratings and minutes that are equal differ by rounding at most.
    private bool AreEqual => Days.Max(d => d.KnownAu) - Days.Min(d => d.KnownAu) <= 1e-9 * Days.Max(d => d.KnownAu);

    private double Factor => Divisor == SdDivisor.Population ? Math.Sqrt((Days.Count - 1.0) / Days.Count) : 1;

    /// <summary>The week that holds a day.</summary>
    /// <param name="day">Any day of the week.</param>
    /// <param name="sessions">Sessions of one athlete; those of other weeks are not counted.</param>
    /// <param name="divisor">Divisor of the SD.</param>
    public static WeekLoad Of(DateOnly day, IEnumerable<SessionWork> sessions, SdDivisor divisor)
    {
        ArgumentNullException.ThrowIfNull(sessions);
        var byDay = sessions.ToLookup(s => s.Date);
        return new()
        {
            Days = [.. Enumerable.Range(0, 7).Select(MondayOf(day).AddDays).Select(d => DayLoad.Of(d, [.. byDay[d]]))],
            Divisor = Enum.IsDefined(divisor) ? divisor : throw new ArgumentOutOfRangeException(nameof(divisor), divisor, "Unknown divisor."),
        };
    }

    /// <summary>The Monday of the week of a day.</summary>
    /// <param name="day">Any day.</param>
    public static DateOnly MondayOf(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + 6) % 7));

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        FormattableString.Invariant($"Training load, week of {Monday:yyyy-MM-dd}"),
        $"session rating × minutes [foster2001]; monotony = mean/SD of the daily loads, strain = total × monotony [foster1998], SD with divisor {(Divisor == SdDivisor.Sample ? "n − 1" : "n")}",
    [
        new("total", Sessions > Unknown ? KnownAu : null, "AU") { Note = TotalAu is not null ? string.Empty : Sessions > Unknown ? "at least; " + NotComputable : NotComputable! },
        new("mean of a day", MeanAu, "AU"), new("SD of the days", SdAu, "AU"),
        new("monotony", Monotony) { Note = NotComputable ?? string.Empty },
        new("strain", StrainAu, "AU") { Note = NotComputable ?? string.Empty },
    ])
    {
        Basis = $"{Sessions} {(Sessions == 1 ? "session" : "sessions")} on {Days.Count(d => d.Sessions > 0)} days; days without sessions entered as 0; no error of a rating is known",
        Remarks = [.. Monotony > LoadCautions.MonotonyReference ? [LoadCautions.MonotonyRemark] : Array.Empty<string>(), LoadCautions.NoPredictor],
    };
}
