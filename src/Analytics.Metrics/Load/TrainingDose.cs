using System.Globalization;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Load;

/// <summary>
/// What one athlete did between two days, as far as it was written down. The first day belongs to it and the last does not: a session on a testing day is taken to
/// follow the test.
/// </summary>
public sealed record TrainingDose : Result
{
    private TrainingDose()
    {
    }

    /// <summary>Identifier of the athlete.</summary>
    public required string AthleteId { get; init; }

    /// <summary>First day.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Day after the last.</summary>
    public required DateOnly To { get; init; }

    /// <summary>Sessions.</summary>
    public required int Sessions { get; init; }

    /// <summary>Sessions that have a rating.</summary>
    public required int Rated { get; init; }

    /// <summary>Share of the sessions that have a rating, 0 to 1; null without sessions.</summary>
    public double? ShareRated => Sessions > 0 ? (double)Rated / Sessions : null;

    /// <summary>Minutes.</summary>
    public required DoseAmount Minutes { get; init; }

    /// <summary>Session load in AU.</summary>
    public required DoseAmount SessionLoad { get; init; }

    /// <summary>Jump contacts.</summary>
    public required DoseAmount JumpContacts { get; init; }

    /// <summary>Sets lifted, by lift and in total; null when no set was written down, which does not say that none was lifted.</summary>
    public required VolumeLoad? Volume { get; init; }

    /// <summary>The whole weeks, Monday to Sunday, between the days.</summary>
    public required IReadOnlyList<TrainingWeek> Weeks { get; init; }

    /// <summary>Whole weeks with at least one session. Of the others it cannot be told whether the athlete rested or nobody wrote.</summary>
    public int WeeksCovered => Weeks.Count(w => w.Sessions > 0);

    /// <summary>Whole weeks whose monotony can be computed.</summary>
    public int WeeksComputable => Weeks.Count(w => w.Load.Monotony is not null);

    /// <summary>Mean monotony over the computable weeks; null without one.</summary>
    public double? MeanMonotony => Weeks.Average(w => w.Load.Monotony);

    /// <summary>Mean strain over the computable weeks in AU; null without one.</summary>
    public double? MeanStrainAu => Weeks.Average(w => w.Load.StrainAu);

    /// <summary>Mean volume-load of the covered weeks in kg, weeks without a set as 0; null when no set was written down in any. Weeks cut by the ends of the period are left out.</summary>
    public double? MeanVolumeKilograms
        => Weeks.Any(w => w.Volume is not null) ? Weeks.Sum(w => w.Volume?.Total.Kilograms ?? 0) / WeeksCovered : null;

    /// <summary>Divisor of the SD of the daily loads.</summary>
    public required SdDivisor Divisor { get; init; }

    /// <summary>What an athlete did between two days.</summary>
    /// <param name="athleteId">Identifier of the athlete.</param>
    /// <param name="sessions">His sessions, in any order; those of other days are not counted.</param>
    /// <param name="from">First day.</param>
    /// <param name="to">Day after the last, later than <paramref name="from"/>.</param>
    /// <param name="divisor">Divisor of the SD of the daily loads.</param>
    public static TrainingDose Of(string athleteId, IEnumerable<SessionWork> sessions, DateOnly from, DateOnly to, SdDivisor divisor)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(athleteId);
        ArgumentNullException.ThrowIfNull(sessions);
        if (to <= from) throw new ArgumentException($"The dose is asked from {Text(from)} to {Text(to)}; the second day must be later.", nameof(to));
        var within = sessions.Where(s => s.Date >= from && s.Date < to).ToList();
        var exercises = within.SelectMany(s => s.Exercises).ToList();
        DoseAmount Sum(DoseMeasure measure, Func<SessionWork, double?> value)
            => new(measure, within.Sum(s => value(s) ?? 0), within.Count, within.Count(s => value(s) is null));
        return new()
        {
            AthleteId = athleteId,
            From = from,
            To = to,
            Sessions = within.Count,
            Rated = within.Count(s => s.Rating is not null),
            Minutes = Sum(DoseMeasure.Minutes, s => s.Length?.Minutes),
            SessionLoad = Sum(DoseMeasure.SessionLoad, s => s.LoadAu),
            JumpContacts = Sum(DoseMeasure.JumpContacts, s => s.JumpContacts),
            Volume = exercises.Count > 0 ? VolumeLoad.Of(exercises) : null,
            Weeks = TrainingWeek.WholeWeeks(within, from, to, divisor),
            Divisor = divisor,
        };
    }

    /// <summary>The dose in one measure for comparing athletes; null where it is not known.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="leastShare">Share of the sessions that must say it, above 0, at most 1; below 1, gaps are filled, see <see cref="DoseAmount.Filled"/>. Sessions and volume-load are taken as written down.</param>
    public double? Amount(DoseMeasure measure, double leastShare = 1) => measure switch
    {
        DoseMeasure.Sessions => Sessions > 0 ? Sessions : null,
        DoseMeasure.Minutes => Minutes.Filled(leastShare),
        DoseMeasure.SessionLoad => SessionLoad.Filled(leastShare),
        DoseMeasure.JumpContacts => JumpContacts.Filled(leastShare),
        DoseMeasure.VolumeLoad => Volume?.Total.Kilograms,
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Unknown measure of the dose."),
    };

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        $"Training done, {Text(From)} to the day before {Text(To)}",
        $"sums of what was written down; monotony and strain by weeks Monday to Sunday [foster1998], SD with divisor {(Divisor == SdDivisor.Sample ? "n − 1" : "n")}",
    [
        new("sessions", Sessions),
        new("sessions with a rating", 100 * ShareRated, "%"),
        Line(Minutes), Line(SessionLoad), Line(JumpContacts),
        new("volume-load", Volume?.Total.Kilograms, "kg") { Note = Volume is null ? "not known: no sets written down" : string.Empty },
        .. (Volume?.Lifts ?? []).Select(l => new ResultLine("volume-load, " + l.Lift, l.VolumeLoad.Kilograms, "kg")),
        new("monotony, mean of weeks", MeanMonotony) { Note = Computable },
        new("strain, mean of weeks", MeanStrainAu, "AU") { Note = Computable },
    ])
    {
        Basis = $"{Sessions} {(Sessions == 1 ? "session" : "sessions")} in {WeeksCovered} of {Weeks.Count} whole weeks, no error known",
        Remarks =
        [
            .. WeeksCovered < Weeks.Count ? ["Of weeks without any session it cannot be told whether the athlete rested or nobody wrote."] : Array.Empty<string>(),
            LoadCautions.NoPredictor,
        ],
    };

    private string Computable => WeeksComputable == Weeks.Count ? string.Empty : $"{WeeksComputable} of {Weeks.Count} weeks computable";

    private static ResultLine Line(DoseAmount amount) => new(amount.Measure.Name(), amount.Sessions == amount.Unknown ? null : amount.Known, amount.Measure.Unit()) { Note = amount.Note };

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
