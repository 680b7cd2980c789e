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
            foreach (var days in week.Days.Where(d => EarlierRows.IsAbout(week.Problem, row, d.Slot, d.Unit.Group) && IsFor(row, d)).GroupBy(d => d.UnitIndex))
                Keep(week, row, [.. days]);
    }

    // One session of the day is enough where the row names none: the exercise would else be asked of a session of another kind.
    private static void Keep(WeekModel week, EarlierChoice row, List<UnitDay> days)
    {
        var met = days.SelectMany(d => Met(week, row, d)).ToList();
        // Where nothing matches, the sum of nothing is 0 and the row cannot be kept.
        week.Rules.Hold(week.Model.Add(LinearExpr.Sum(met) >= 1), Rule(week.Problem, row));
    }

    /// <summary>What would keep the row in a session.</summary>
    private static List<BoolVar> Met(WeekModel week, EarlierChoice row, UnitDay day)
    {
        List<BoolVar> choices = [.. (row.IsOwnWork ? day.Own.Values.SelectMany(o => o) : day.Shared).Where(c => Matches(week.Problem, row, day, c.Candidate)).Select(c => c.Chosen)];
        if (!row.IsOwnWork || row.AthleteId is not { } player || day.Unit.IsApart || choices.Count == 0) return choices;
        var quality = week.Problem.Exercises.Find(row.ExerciseId)!.Quality;
        if (day.OwnOf.GetValueOrDefault(player)?.GetValueOrDefault(quality) is not { } takes) return choices;
        // Own work of his: it must be there, and he must be the one who does it.
        var does = week.Model.NewBoolVar($"kept {row.ExerciseId} {player} {day}");
        week.Model.AddImplication(does, takes);
        week.Model.Add(LinearExpr.Sum(choices) >= does);
        return [does];
    }

    /// <summary>Whether a row is about a unit: its group when the row names a group, the unit of the player when it names a player.</summary>
    public static bool IsFor(EarlierChoice row, UnitDay day)
        => row.AthleteId is { } player ? day.Unit.Players.Any(p => p.Id == player) && (day.Unit.IsApart || row.IsOwnWork)
            : row.Group == day.Unit.Group && !day.Unit.IsApart;

    /// <summary>Whether a candidate is what a row means.</summary>
    public static bool Matches(PlanProblem problem, EarlierChoice row, UnitDay day, Candidate candidate)
        => EarlierRows.IsAbout(problem, row, day.Slot, day.Unit.Group) && candidate.Exercise.Id == row.ExerciseId && (row.SchemeId is null || row.SchemeId == candidate.Scheme.Id);

    /// <summary>Whether a kept row names a candidate for a unit.</summary>
    public static bool Names(PlanProblem problem, UnitDay day, Candidate candidate)
        => problem.Earlier.Any(e => e.Force == ChoiceForce.Keep && Matches(problem, e, day, candidate) && IsFor(e, day));

    public static RuleAtPlace Rule(PlanProblem problem, EarlierChoice row)
    {
        var who = row.AthleteId is { } id ? problem.Players.FirstOrDefault(p => p.Id == id)?.Name ?? id : row.Group;
        var what = $"{problem.Exercises.Find(row.ExerciseId)?.Name ?? row.ExerciseId}{(row.SchemeId is null ? "" : $" ({row.SchemeId})")}";
        var day = PlaceTexts.Session(row.Date, row.Start);
        var force = row.Force == ChoiceForce.Never ? "never" : "kept";
        return new(RuleIds.Kept, $"{who}, {day}, {what}, {force}",
            $"{(row.Force == ChoiceForce.Never ? "you ruled out" : "you kept")} {what} for {who} on {day}{(row.Place.Length > 0 ? $" ({row.Place})" : "")}");
    }
}
