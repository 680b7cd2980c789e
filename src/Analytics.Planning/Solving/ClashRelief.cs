using System.Globalization;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>What taking one rule away would give, in words; of minutes, how many would do.</summary>
internal static class ClashRelief
{
    public static Relaxation Of(PlanProblem problem, IReadOnlyList<RuleAtPlace> all, RuleAtPlace rule, bool givesPlan, PlanOptions options)
        => new(rule, givesPlan, !givesPlan ? "does not help alone: other rules clash too"
            : rule.RuleId == RuleIds.SessionMinutes ? Minutes(problem, all, rule, options) : Text(problem, rule));

    // The shortest session that keeps all other rules.
    private static string Minutes(PlanProblem problem, IReadOnlyList<RuleAtPlace> all, RuleAtPlace rule, PlanOptions options)
    {
        var week = WeekModel.Of(problem, TrainingUnit.Of(problem), explain: true);
        week.Model.AddAssumptions(all.Where(r => r != rule).Select(week.Rules.Switch));
        var days = week.Days.Where(d => TimeConstraints.Rule(d) == rule).ToList();
        var longest = week.Model.NewIntVar(0, 24 * 3600, "longest");
        foreach (var day in days) week.Model.Add(longest >= TimeConstraints.Seconds(week, day));
        week.Model.Minimize(longest);
        var solver = WeekSolver.Make(options);
        return solver.Solve(week.Model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? string.Create(CultureInfo.InvariantCulture, $"with {Math.Ceiling(solver.ObjectiveValue / 60):0} minutes instead of {days[0].Slot.Minutes} there is a plan")
            : "with more minutes there is a plan";
    }

    private static string Text(PlanProblem problem, RuleAtPlace rule) => rule.RuleId switch
    {
        RuleIds.StationPlaces => "with enough places there is a plan",
        RuleIds.DayDemands => "without this there is a plan; another kind of day, or a lower least number, would do",
        RuleIds.Restrictions => "only if the people who set it say so",
        RuleIds.Kept => "without this choice there is a plan",
        RuleIds.GameGap => "with heavy work on that day there is a plan; better move the session or change its kind",
        RuleIds.HeavyLowerGap or RuleIds.HighImpactGap => "with less time between there is a plan; better move one session",
        RuleIds.Prerequisites => "only if the coach knows the players are ready for it",
        _ => problem.Rules[rule.RuleId].Value is { } value
            ? string.Create(CultureInfo.InvariantCulture, $"with more than {value:0.##} {problem.Rules[rule.RuleId].Unit} there is a plan") : "without it there is a plan",
    };
}
