using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Solving;

/// <summary>
/// A restricted player is asked for no more than his restrictions leave of what the room and his readiness allow, as long as somebody in the session can do what its kind asks for. Where nobody can,
/// the session makes no sense and the clash is told.
/// </summary>
internal static class Excuses
{
    public static int Least(PlanProblem problem, UnitDay day, DayDemand demand)
    {
        if (!day.Unit.IsApart || demand.Least == 0) return demand.Least;
        var allowed = Allowed(problem, day.Unit.Players[0], day, demand);
        if (allowed >= demand.Least) return demand.Least;
        var others = problem.Players.Where(p => day.Slot.Has(p.Group));
        return others.Any(p => Allowed(problem, p, day, demand) >= demand.Least) ? allowed : demand.Least;
    }

    private static int Allowed(PlanProblem problem, PlanPlayer player, UnitDay day, DayDemand demand)
        => problem.Exercises.All.Count(e => demand.Concerns(e) && !player.Restrictions.Any(r => r.Forbids(e, day.Slot.Date)) && IsThere(problem, e, day)
            && (!problem.Rules.Refuses(RuleIds.Prerequisites) || Prerequisite.Lacks(player, e, problem.Rules, day.Slot.Date) is null));

    private static bool IsThere(PlanProblem problem, Exercise exercise, UnitDay day)
        => !problem.Rules.Refuses(RuleIds.StationPlaces) || exercise.Stations.All(s => StaticRules.RoomOf(problem, day.Slot)?.Places(s) > 0);
}
