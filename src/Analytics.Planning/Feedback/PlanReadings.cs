using Analytics.Metrics.Load;
using Analytics.Planning.Plans;

namespace Analytics.Planning.Feedback;

/// <summary>Logged sets that no row of the plan asks for.</summary>
/// <param name="AthleteId">Identifier of the player.</param>
/// <param name="Lift">Identifier of the lift.</param>
/// <param name="Date">Day.</param>
/// <param name="Sets">Sets.</param>
public sealed record UnplannedSets(string AthleteId, string Lift, DateOnly Date, int Sets);

/// <summary>Plan and log side by side.</summary>
/// <remarks>
/// A row of the plan and a logged lift belong together when player and identifier are the same and the days are the same, or one day apart where neither has a partner of
/// its own day (a session moved by a day is common, by two it is another session; our choice, no source). The day after is taken before the day before. Every
/// lift logged on a day has one partner at most. A row for a player takes the place of his group's of the same day, exercise and part.
/// </remarks>
/// <param name="Readings">Planned exercises by player, exercise and day, logged or not.</param>
/// <param name="Unplanned">Lifts logged that have no partner.</param>
public sealed record PlanReadings(IReadOnlyList<PlanReading> Readings, IReadOnlyList<UnplannedSets> Unplanned)
{
    private sealed record Logged(string AthleteId, string Lift, DateOnly Date, IReadOnlyList<ExerciseSets> Sets, double? Rating);

    /// <summary>Puts plan and log side by side; the order of either does not matter.</summary>
    /// <param name="planned">Rows of plans; those that forbid an exercise plan none.</param>
    /// <param name="logged">Logged sessions.</param>
    /// <param name="groups">Position group by player; a group's row is for every player in it.</param>
    public static PlanReadings Of(IEnumerable<EarlierChoice> planned, IEnumerable<LoggedSession> logged, IReadOnlyDictionary<string, string> groups)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(logged);
        ArgumentNullException.ThrowIfNull(groups);
        var open = logged.SelectMany(s => s.Work.Exercises.Select(e => (s.AthleteId, s.Work.Date, s.Work.Rating, Sets: e)))
            .GroupBy(e => (e.AthleteId, e.Sets.Lift, e.Date))
            .ToDictionary(g => g.Key, g => new Logged(g.Key.AthleteId, g.Key.Lift, g.Key.Date,
                [.. g.Select(e => e.Sets).OrderByDescending(e => e.Load.Kilograms).ThenByDescending(e => e.Repetitions).ThenByDescending(e => e.Sets)], g.Max(e => e.Rating)));
        var readings = ForPlayers(planned, groups)
            .OrderBy(r => r.AthleteId, StringComparer.Ordinal).ThenBy(r => r.ExerciseId, StringComparer.Ordinal).ThenBy(r => r.Date).ToList();
        foreach (var apart in (int[])[0, 1, -1])
        {
            for (var i = 0; i < readings.Count; i++)
            {
                var reading = readings[i];
                if (reading.LoggedOn is null && open.Remove((reading.AthleteId, reading.ExerciseId, reading.Date.AddDays(apart)), out var found))
                    readings[i] = reading with { LoggedOn = found.Date, Sets = found.Sets, Rating = found.Rating };
            }
        }

        return new(readings, [.. open.Values.OrderBy(l => l.AthleteId, StringComparer.Ordinal).ThenBy(l => l.Lift, StringComparer.Ordinal).ThenBy(l => l.Date)
            .Select(l => new UnplannedSets(l.AthleteId, l.Lift, l.Date, l.Sets.Sum(s => s.Sets)))]);
    }

    private static IEnumerable<PlanReading> ForPlayers(IEnumerable<EarlierChoice> planned, IReadOnlyDictionary<string, string> groups)
    {
        var players = groups.ToLookup(g => g.Value, g => g.Key, StringComparer.Ordinal);
        return planned.Where(p => p.Force != ChoiceForce.Never)
            .SelectMany(p => (p.AthleteId is { } own ? [own] : players[p.Group ?? ""]).Select(id => (Id: id, Row: p)))
            .GroupBy(p => (p.Id, p.Row.ExerciseId, p.Row.Date))
            .Select(g => new PlanReading
            {
                AthleteId = g.Key.Id,
                ExerciseId = g.Key.ExerciseId,
                Date = g.Key.Date,
                Planned = [.. g.GroupBy(p => p.Row.IsOwnWork).OrderBy(part => part.Key)
                    .SelectMany(part => part.Any(p => p.Row.AthleteId is not null) ? part.Where(p => p.Row.AthleteId is not null) : part).Select(p => p.Row)
                    .OrderByDescending(p => p.LoadKilograms).ThenByDescending(p => p.Repetitions).ThenByDescending(p => p.Sets).ThenBy(p => p.SchemeId, StringComparer.Ordinal)],
            });
    }
}
