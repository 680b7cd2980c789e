using Analytics.Planning.Plans;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>Differences from an earlier plan of the same week.</summary>
internal static class WeekChanges
{
    /// <summary>Rows of an earlier plan that speak of choices: planned ones, for a group or for a player's own work.</summary>
    public static IEnumerable<EarlierChoice> Rows(PlanProblem problem) => problem.Earlier.Where(e => e.Force != ChoiceForce.Never);

    /// <summary>Takes off what changes cost. Kept rows are there by constraint and cost nothing. Of a week without earlier rows nothing is a change.</summary>
    public static void Add(WeekModel week, LinearExprBuilder sum)
    {
        var rows = Rows(week.Problem).ToList();
        foreach (var day in week.Days)
        {
            var mine = rows.Where(r => r.Date == day.Slot.Date && KeptConstraints.IsFor(r, day)).ToList();
            var groupRows = mine.Where(r => r.AthleteId is null || day.Unit.IsApart).ToList();
            if (groupRows.Count == 0) continue;
            Count(week, day, sum, day.Shared, [.. groupRows.Where(r => !r.IsOwnWork)]);
            Count(week, day, sum, [.. day.Own.Values.SelectMany(o => o)], [.. mine.Where(r => r.IsOwnWork)]);
            foreach (var (id, own) in day.OwnOf)
                foreach (var row in mine.Where(r => r.AthleteId == id && r.IsOwnWork))
                    if (day.Own.FirstOrDefault(o => o.Value.Any(c => KeptConstraints.Matches(row, day, c.Candidate))) is { Value: not null } was)
                        sum.AddTerm(own[was.Key], WeekObjective.Change);
        }
    }

    private static void Count(WeekModel week, UnitDay day, LinearExprBuilder sum, IReadOnlyList<Choice> choices, IReadOnlyList<EarlierChoice> rows)
    {
        foreach (var row in rows)
        {
            var same = choices.Where(c => KeptConstraints.Matches(row, day, c.Candidate)).Select(c => c.Chosen).ToList();
            if (same.Count > 0) sum.AddTerm(week.Reached(same, $"as before {row.ExerciseId} {row.SchemeId} {row.AthleteId} {day}"), WeekObjective.Change);
        }

        foreach (var choice in choices.Where(c => !rows.Any(r => KeptConstraints.Matches(r, day, c.Candidate)))) sum.AddTerm(choice.Chosen, -WeekObjective.Change);
    }
}
