using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>Choices of the coach that stay.</summary>
internal static class KeptConstraints
{
    public static void Add(WeekModel week)
    {
        if (!week.Problem.Rules.IsOn(RuleIds.Kept)) return;
        foreach (var row in week.Problem.Earlier.Where(e => e.Force == ChoiceForce.Keep))
            foreach (var day in week.Days.Where(d => d.Slot.Date == row.Date && IsFor(row, d)).Take(row.AthleteId is null ? int.MaxValue : 1))
                Keep(week, row, day);
    }

    private static void Keep(WeekModel week, EarlierChoice row, UnitDay day)
    {
        var choices = (row.IsOwnWork ? day.Own.Values.SelectMany(o => o) : day.Shared).Where(c => Matches(row, day, c.Candidate)).ToList();
        var rule = Rule(week.Problem, row);
        // Where nothing matches, the sum of nothing is 0 and the row cannot be kept.
        week.Rules.Hold(week.Model.Add(LinearExpr.Sum(choices.Select(c => c.Chosen)) >= 1), rule);
        if (!row.IsOwnWork || row.AthleteId is not { } player || day.Unit.IsApart || choices.Count == 0) return;
        if (day.OwnOf.GetValueOrDefault(player)?.GetValueOrDefault(choices[0].Candidate.Exercise.Quality) is { } own) week.Rules.Hold(week.Model.Add(own == 1), rule);
    }

    /// <summary>Whether a row is about a unit: its group when the row names a group, the unit of the player when it names a player.</summary>
    public static bool IsFor(EarlierChoice row, UnitDay day)
        => row.AthleteId is { } player ? day.Unit.Players.Any(p => p.Id == player) && (day.Unit.IsApart || row.IsOwnWork)
            : row.Group == day.Unit.Group && !day.Unit.IsApart;

    /// <summary>Whether a candidate is what a row means.</summary>
    public static bool Matches(EarlierChoice row, UnitDay day, Candidate candidate)
        => row.Date == day.Slot.Date && candidate.Exercise.Id == row.ExerciseId && (row.SchemeId is null || row.SchemeId == candidate.Scheme.Id);

    /// <summary>Whether a kept row names a candidate for a unit.</summary>
    public static bool Names(PlanProblem problem, UnitDay day, Candidate candidate)
        => problem.Earlier.Any(e => e.Force == ChoiceForce.Keep && Matches(e, day, candidate) && IsFor(e, day));

    public static RuleAtPlace Rule(PlanProblem problem, EarlierChoice row)
    {
        var who = row.AthleteId is { } id ? problem.Players.FirstOrDefault(p => p.Id == id)?.Name ?? id : row.Group;
        var what = $"{problem.Exercises.Find(row.ExerciseId)?.Name ?? row.ExerciseId}{(row.SchemeId is null ? "" : $" ({row.SchemeId})")}";
        var force = row.Force == ChoiceForce.Never ? "never" : "kept";
        return new(RuleIds.Kept, $"{who}, {PlaceTexts.Day(row.Date)}, {what}, {force}",
            $"{(row.Force == ChoiceForce.Never ? "you ruled out" : "you kept")} {what} for {who} on {PlaceTexts.Day(row.Date)}{(row.Place.Length > 0 ? $" ({row.Place})" : "")}");
    }
}
