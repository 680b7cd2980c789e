using Analytics.Planning.Plans;

namespace Analytics.Planning.Solving;

/// <summary>Differences of a plan from an earlier one, in words.</summary>
internal static class PlanChanges
{
    public static IReadOnlyList<string> Of(PlanProblem problem, IReadOnlyList<UnitSession> sessions)
    {
        var rows = WeekChanges.Rows(problem).Where(r => !r.IsOwnWork).ToList();
        if (rows.Count == 0) return [];
        var changes = new List<string>();
        foreach (var unit in sessions.GroupBy(s => (s.Slot.Date, s.Group, Apart: s.IsApart ? s.Players[0] : "")))
        {
            var mine = rows.Where(r => r.Date == unit.Key.Date && IsFor(r, unit.First())).ToList();
            if (mine.Count > 0) changes.AddRange(OfDay(problem, [.. unit], mine));
        }

        return changes;
    }

    // Rows of a session take what is theirs before rows for any session of the day; each row answers for one exercise.
    private static IEnumerable<string> OfDay(PlanProblem problem, IReadOnlyList<UnitSession> sessions, IReadOnlyList<EarlierChoice> mine)
    {
        var who = sessions[0].IsApart ? problem.Players.First(p => p.Id == sessions[0].Players[0]).Name : sessions[0].Group;
        var used = new HashSet<EarlierChoice>(ReferenceEqualityComparer.Instance);
        bool IsOfTheDay(EarlierChoice r) => EarlierRows.IsOfTheDay(problem, r, sessions[0].Group);
        bool IsAbout(EarlierChoice r, UnitSession s) => EarlierRows.IsAbout(problem, r, s.Slot, s.Group);
        foreach (var row in mine.Where(r => !sessions.Any(s => IsAbout(r, s) && s.Shared.Any(i => Same(r, i)))))
        {
            var at = sessions.Count == 1 ? PlaceTexts.Session(sessions[0].Slot) : PlaceTexts.Session(row.Date, IsOfTheDay(row) ? null : row.Start);
            yield return $"{who}, {at}: {problem.Exercises.Find(row.ExerciseId)?.Name ?? row.ExerciseId} taken out";
        }

        foreach (var session in sessions.Where(s => mine.Any(r => IsAbout(r, s))))
            foreach (var item in session.Shared)
            {
                if (mine.Where(r => IsAbout(r, session) && Same(r, item) && !used.Contains(r)).OrderBy(IsOfTheDay).FirstOrDefault() is { } row) used.Add(row);
                else yield return $"{who}, {PlaceTexts.Session(session.Slot)}: {item.Exercise.Name} ({item.Scheme.Name}) put in";
            }
    }

    private static bool IsFor(EarlierChoice row, UnitSession session)
        => row.AthleteId is { } player ? session.IsApart && session.Players.Contains(player) : row.Group == session.Group && !session.IsApart;

    private static bool Same(EarlierChoice row, PlannedItem item)
        => row.ExerciseId == item.Exercise.Id && (row.SchemeId is null || row.SchemeId == item.Scheme.Id);
}
