using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;

namespace Analytics.Planning.Solving;

/// <summary>Work an earlier plan has for a day near the week: rest is counted over the turn of the week too.</summary>
/// <param name="Row">The row of the plan.</param>
/// <param name="Start">Start of its session as the row has it, else where the calendar has one for the group that day; else null.</param>
/// <param name="IsHeavyLower">Whether it is heavy and the legs carry it.</param>
/// <param name="IsHighImpact">Whether a landing of high impact comes in it.</param>
internal sealed record WorkAround(EarlierChoice Row, TimeOnly? Start, bool IsHeavyLower, bool IsHighImpact)
{
    /// <summary>What of the earlier plan counts: rows of days outside the week with heavy work for the legs or landings of high impact.</summary>
    public static IReadOnlyList<WorkAround> Of(PlanProblem problem)
        => [.. problem.Earlier.Where(e => e.Force != ChoiceForce.Never && (e.Date < problem.Monday || e.Date >= problem.Monday.AddDays(7)))
            .Select(e => Of(problem, e)).OfType<WorkAround>().Where(w => w.IsHeavyLower || w.IsHighImpact)];

    /// <summary>Whether it is work of somebody in a unit.</summary>
    public bool Concerns(string group, IEnumerable<string> players) => Row.AthleteId is { } id ? players.Contains(id) : Row.Group == group;

    private static WorkAround? Of(PlanProblem problem, EarlierChoice row)
    {
        if (problem.Exercises.Find(row.ExerciseId) is not { } exercise) return null;
        var scheme = row.SchemeId is { } id ? problem.Schemes.FirstOrDefault(s => s.Id == id) : null;
        // A row that does not say how: strength for the legs may have been heavy.
        var heavy = scheme is null ? exercise.Quality == TrainedQuality.MaximalStrength : DoseCount.IsHeavy(exercise, scheme, problem.Rules.Value(RuleIds.HeavyPercent));
        var group = row.Group ?? problem.Players.FirstOrDefault(p => p.Id == row.AthleteId)?.Group;
        var sessions = problem.SessionsAround.Where(s => s.Date == row.Date && group is not null && s.Has(group)).ToList();
        return new(row, row.Start ?? (sessions.Count == 1 ? sessions[0].Start : null), heavy && exercise.Pattern.IsLowerBody(), exercise.Impact == Impact.High);
    }
}
