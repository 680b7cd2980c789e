using Analytics.Planning.Exercises;

namespace Analytics.Planning.Feedback;

/// <summary>Sets of one quality one player was to do over a stretch, and those he wrote down.</summary>
/// <param name="AthleteId">Identifier of the player.</param>
/// <param name="Quality">Quality.</param>
/// <param name="PlannedSets">Planned sets.</param>
/// <param name="LoggedSets">Those of them that were logged, whatever their load; never more than planned.</param>
/// <param name="OtherSets">Sets of the quality logged besides: not planned, or more than planned, warm-up sets among them where they were written down.</param>
public sealed record PlannedDose(string AthleteId, TrainedQuality Quality, int PlannedSets, int LoggedSets, int OtherSets)
{
    /// <summary>Share of the planned sets that was logged, 0 to 1; null when none was planned. What was not logged is not known, so it is no share done.</summary>
    public double? LoggedShare => PlannedSets > 0 ? (double)LoggedSets / PlannedSets : null;
}

/// <summary>Planned doses of a stretch.</summary>
/// <param name="Doses">One a player and quality with anything planned or logged, by player and quality.</param>
/// <param name="UnknownExercises">Identifiers that the catalogue does not have: their sets are in no dose.</param>
/// <param name="WithoutSets">Planned exercises of players whose row names no number of sets: in no dose either.</param>
public sealed record PlannedDoses(IReadOnlyList<PlannedDose> Doses, IReadOnlyList<string> UnknownExercises, int WithoutSets)
{
    /// <summary>Doses between two days.</summary>
    /// <param name="readings">Plan and log.</param>
    /// <param name="exercises">Exercises: they tell the quality.</param>
    /// <param name="from">First day.</param>
    /// <param name="to">Day after the last.</param>
    /// <exception cref="ArgumentException">The second day is not later.</exception>
    public static PlannedDoses Between(PlanReadings readings, ExerciseCatalogue exercises, DateOnly from, DateOnly to)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(exercises);
        if (to <= from) throw new ArgumentException("The second day must be later than the first.", nameof(to));
        var planned = readings.Readings.Where(r => r.Date >= from && r.Date < to).ToList();
        var other = readings.Unplanned.Where(u => u.Date >= from && u.Date < to).ToList();
        var parts = planned.Select(r => (r.AthleteId, r.ExerciseId, Planned: r.PlannedSets ?? 0, Logged: Math.Min(r.LoggedSets, r.PlannedSets ?? 0),
                Other: Math.Max(0, r.LoggedSets - (r.PlannedSets ?? 0))))
            .Concat(other.Select(u => (u.AthleteId, ExerciseId: u.Lift, Planned: 0, Logged: 0, Other: u.Sets))).ToList();
        return new(
            [.. parts.Select(p => (p, exercises.Find(p.ExerciseId)?.Quality)).Where(p => p.Quality is not null)
                .GroupBy(p => (p.p.AthleteId, p.Quality!.Value)).OrderBy(g => g.Key.AthleteId, StringComparer.Ordinal).ThenBy(g => g.Key.Value)
                .Select(g => new PlannedDose(g.Key.AthleteId, g.Key.Value, g.Sum(p => p.p.Planned), g.Sum(p => p.p.Logged), g.Sum(p => p.p.Other)))
                .Where(d => d.PlannedSets + d.OtherSets > 0)],
            [.. parts.Select(p => p.ExerciseId).Where(id => exercises.Find(id) is null).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            planned.Count(r => r.PlannedSets is null));
    }
}
