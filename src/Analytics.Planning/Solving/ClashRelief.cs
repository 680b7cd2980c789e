using System.Globalization;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>What taking one rule away would give: a plan that breaks it as little as possible, and by how much.</summary>
internal static class ClashRelief
{
    public static Relaxation Of(PlanProblem problem, IReadOnlyList<RuleAtPlace> all, RuleAtPlace rule, PlanOptions options)
    {
        var week = WeekModel.Of(problem, TrainingUnit.Of(problem), explain: true);
        week.Model.AddAssumptions(all.Where(r => r != rule).Select(week.Rules.Switch));
        var days = week.Days.Where(d => TimeConstraints.Rule(d) == rule).ToList();
        if (rule.RuleId == RuleIds.SessionMinutes && days.Count > 0)
        {
            var longest = week.Model.NewIntVar(0, 24 * 3600, "longest");
            foreach (var day in days) week.Model.Add(longest >= TimeConstraints.Seconds(week, day));
            week.Model.Minimize(longest);
        }

        var solver = WeekSolver.Make(options);
        if (solver.Solve(week.Model) is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible)) return new(rule, GivesPlan: false, "does not help alone: other rules clash too");
        return new(rule, GivesPlan: true, Text(problem, rule, days, solver));
    }

    private static string Text(PlanProblem problem, RuleAtPlace rule, List<UnitDay> days, CpSolver solver) => rule.RuleId switch
    {
        RuleIds.SessionMinutes when days.Count > 0 => string.Create(CultureInfo.InvariantCulture,
            $"with {Math.Ceiling(solver.ObjectiveValue / 60):0} minutes instead of {days[0].Slot.Minutes} there is a plan"),
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
