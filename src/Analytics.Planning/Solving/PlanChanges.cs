using Analytics.Planning.Plans;

namespace Analytics.Planning.Solving;

/// <summary>Differences of a plan from an earlier one, in words.</summary>
internal static class PlanChanges
{
    public static IReadOnlyList<string> Of(PlanProblem problem, IReadOnlyList<UnitSession> sessions)
    {
        var rows = WeekChanges.Rows(problem).ToList();
        if (rows.Count == 0) return [];
        var changes = new List<string>();
        foreach (var session in sessions)
        {
            var mine = rows.Where(r => r.Date == session.Slot.Date && !r.IsOwnWork && IsFor(r, session)).ToList();
            if (mine.Count == 0) continue;
            var who = session.IsApart ? problem.Players.First(p => p.Id == session.Players[0]).Name : session.Group;
            var at = $"{who}, {PlaceTexts.Session(session.Slot)}";
            changes.AddRange(mine.Where(r => !session.Shared.Any(i => Same(r, i))).Select(r => $"{at}: {problem.Exercises.Find(r.ExerciseId)?.Name ?? r.ExerciseId} taken out"));
            changes.AddRange(session.Shared.Where(i => !mine.Any(r => Same(r, i))).Select(i => $"{at}: {i.Exercise.Name} ({i.Scheme.Name}) put in"));
        }

        return changes;
    }

    private static bool IsFor(EarlierChoice row, UnitSession session)
        => row.AthleteId is { } player ? session.IsApart && session.Players.Contains(player) : row.Group == session.Group && !session.IsApart;

    private static bool Same(EarlierChoice row, PlannedItem item)
        => row.ExerciseId == item.Exercise.Id && (row.SchemeId is null || row.SchemeId == item.Scheme.Id);
}
