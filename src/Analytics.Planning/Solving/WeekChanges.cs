using Analytics.Planning.Plans;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>Differences from an earlier plan of the same week.</summary>
internal static class WeekChanges
{
    /// <summary>Rows of an earlier plan that speak of choices: planned ones, for a group or for a player's own work.</summary>
    public static IEnumerable<EarlierChoice> Rows(PlanProblem problem) => problem.Earlier.Where(e => e.Force != ChoiceForce.Never);

    /// <summary>Takes off what changes cost. Kept rows are there by constraint and cost nothing. Of a session without earlier rows nothing is a change.</summary>
    public static void Add(WeekModel week, LinearExprBuilder sum)
    {
        var rows = Rows(week.Problem).ToList();
        foreach (var date in week.Days.GroupBy(d => (d.UnitIndex, d.Slot.Date)))
        {
            var unit = date.First();
            var mine = rows.Where(r => r.Date == unit.Slot.Date && KeptConstraints.IsFor(r, unit)).ToList();
            var groupRows = mine.Where(r => r.AthleteId is null || unit.Unit.IsApart).ToList();
            var days = date.Where(d => groupRows.Exists(r => EarlierRows.IsAbout(week.Problem, r, d.Slot, d.Unit.Group))).ToList();
            if (days.Count == 0) continue;
            Count(week, days, sum, d => d.Shared, [.. groupRows.Where(r => !r.IsOwnWork)]);
            Count(week, days, sum, d => d.Own.Values.SelectMany(o => o), [.. mine.Where(r => r.IsOwnWork)]);
            foreach (var row in mine.Where(r => r is { IsOwnWork: true, AthleteId: not null })) OwnOf(week, days, sum, row);
        }
    }

    private static void Count(WeekModel week, List<UnitDay> days, LinearExprBuilder sum, Func<UnitDay, IEnumerable<Choice>> of, IReadOnlyList<EarlierChoice> rows)
    {
        var choices = days.SelectMany(d => of(d).Select(c => (Day: d, Choice: c))).ToList();
        foreach (var row in rows)
        {
            var same = choices.Where(c => KeptConstraints.Matches(week.Problem, row, c.Day, c.Choice.Candidate)).Select(c => c.Choice.Chosen).ToList();
            if (same.Count > 0) sum.AddTerm(week.Reached(same, $"as before {row.ExerciseId} {row.SchemeId} {row.Start} {row.AthleteId} {days[0]}"), WeekObjective.Change);
        }

        foreach (var (_, choice) in choices.Where(c => !rows.Any(r => KeptConstraints.Matches(week.Problem, r, c.Day, c.Choice.Candidate)))) sum.AddTerm(choice.Chosen, -WeekObjective.Change);
        if (days.Count > 1) Again(week, days, sum, choices, rows);
    }

    // A row for any session of the day is met once: where it comes in a second one too, that is a new choice.
    private static void Again(WeekModel week, List<UnitDay> days, LinearExprBuilder sum, List<(UnitDay Day, Choice Choice)> choices, IReadOnlyList<EarlierChoice> rows)
    {
        foreach (var exercise in rows.GroupBy(r => r.ExerciseId).Where(g => g.Any(r => EarlierRows.IsOfTheDay(week.Problem, r, days[0].Unit.Group))))
        {
            // Rows of several players for one exercise are one choice of it; planned and kept are the same row.
            var times = exercise.GroupBy(r => r.AthleteId).Max(g => g.Select(r => (r.Start, r.SchemeId)).Distinct().Count());
            var same = choices.Where(c => exercise.Any(r => KeptConstraints.Matches(week.Problem, r, c.Day, c.Choice.Candidate))).ToList();
            var most = same.Select(c => c.Day).Distinct().Count() - times;
            if (most <= 0) continue;
            var again = week.Model.NewIntVar(0, most, $"again {exercise.Key} {days[0]}");
            week.Model.Add(again >= LinearExpr.Sum(same.Select(c => c.Choice.Chosen)) - times);
            sum.AddTerm(again, -WeekObjective.Change);
        }
    }

    private static void OwnOf(WeekModel week, List<UnitDay> days, LinearExprBuilder sum, EarlierChoice row)
    {
        List<BoolVar> takes = [];
        foreach (var day in days)
            if (day.OwnOf.TryGetValue(row.AthleteId!, out var own) && day.Own.FirstOrDefault(o => o.Value.Any(c => KeptConstraints.Matches(week.Problem, row, day, c.Candidate))) is { Value: not null } was)
                takes.Add(own[was.Key]);
        if (takes.Count > 0) sum.AddTerm(week.Reached(takes, $"own as before {row.ExerciseId} {row.AthleteId} {row.Start} {days[0]}"), WeekObjective.Change);
    }
}
