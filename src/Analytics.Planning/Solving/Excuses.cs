using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;

namespace Analytics.Planning.Solving;

/// <summary>
/// A restricted player is asked for no more than his restrictions leave, as long as somebody in the session can do what its kind asks for. Where nobody can,
/// the session makes no sense and the clash is told.
/// </summary>
internal static class Excuses
{
    public static int Least(PlanProblem problem, UnitDay day, Func<Exercise, bool> counts, int least)
    {
        if (!day.Unit.IsApart || least == 0) return least;
        var allowed = Allowed(problem, day.Unit.Players[0], day, counts);
        if (allowed >= least) return least;
        var others = problem.Players.Where(p => day.Slot.Has(p.Group));
        return others.Any(p => Allowed(problem, p, day, counts) >= least) ? allowed : least;
    }

    private static int Allowed(PlanProblem problem, People.PlanPlayer player, UnitDay day, Func<Exercise, bool> counts)
        => problem.Exercises.All.Count(e => counts(e) && !player.Restrictions.Any(r => r.Forbids(e, day.Slot.Date)));
}
