using Analytics.Planning.Plans;
using Analytics.Planning.Rules;

namespace Analytics.Planning.Solving;

/// <summary>Rules that are only flagged and that a plan does not keep.</summary>
internal static class PlanFlags
{
    public static IReadOnlyList<RuleFlag> Of(PlanProblem problem, IReadOnlyList<UnitSession> sessions)
        => [.. PlanCheck.Of(problem, sessions).Where(f => problem.Rules[f.RuleId].Handling == RuleHandling.Flag)];
}
