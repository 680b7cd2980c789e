using System.Globalization;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>What taking one rule away would give, in words; of minutes, how many would do.</summary>
internal static class ClashRelief
{
    /// <summary>Without the rule there is a plan.</summary>
    public static Relaxation GivesPlan(PlanProblem problem, IReadOnlyList<RuleAtPlace> all, RuleAtPlace rule, PlanOptions options)
        => new(rule, true, Text(problem, all, rule, "there is a plan", options));

    /// <summary>Without the rule this clash is settled, while others stay; all other rules are those of no other clash.</summary>
    public static Relaxation Settles(PlanProblem problem, IReadOnlyList<RuleAtPlace> alone, RuleAtPlace rule, PlanOptions options)
        => new(rule, false, Text(problem, alone, rule, "this clash is settled, not the others", options));

    /// <summary>Nothing that is known.</summary>
    public static Relaxation None(RuleAtPlace rule) => new(rule, false, "does not help alone: other rules clash too");

    // The shortest session that keeps all other rules.
    private static string Minutes(PlanProblem problem, IReadOnlyList<RuleAtPlace> all, RuleAtPlace rule, string then, PlanOptions options)
    {
        var week = WeekModel.Of(problem, TrainingUnit.Of(problem), explain: true);
        week.Model.AddAssumptions(all.Where(r => r != rule).Select(week.Rules.Switch));
        var days = week.Days.Where(d => TimeConstraints.Rule(d) == rule).ToList();
        var longest = week.Model.NewIntVar(0, 24 * 3600, "longest");
        foreach (var day in days) week.Model.Add(longest >= TimeConstraints.Seconds(week, day));
        week.Model.Minimize(longest);
        var solver = WeekSolver.Make(options);
        return solver.Solve(week.Model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? string.Create(CultureInfo.InvariantCulture, $"with {Math.Ceiling(solver.ObjectiveValue / 60):0} minutes instead of {days[0].Slot.Minutes} {then}")
            : $"with more minutes {then}";
    }

    private static string Text(PlanProblem problem, IReadOnlyList<RuleAtPlace> all, RuleAtPlace rule, string then, PlanOptions options) => rule.RuleId switch
    {
        RuleIds.SessionMinutes => Minutes(problem, all, rule, then, options),
        RuleIds.StationPlaces => $"with enough places {then}",
        RuleIds.DayDemands => $"where that day need not keep to its kind {then}; another kind of day, or other numbers in day-kinds.csv, would do",
        RuleIds.Restrictions => "only if the people who set it say so",
        RuleIds.Kept => $"without this choice {then}",
        RuleIds.GameGap => $"with heavy work on that day {then}; better move the session or change its kind",
        RuleIds.HeavyLowerGap or RuleIds.HighImpactGap => $"with less time between {then}; better move one session",
        RuleIds.Prerequisites => "only if the coach knows the players are ready for it",
        _ => problem.Rules[rule.RuleId].Value is { } value
            ? string.Create(CultureInfo.InvariantCulture, $"with more than {value:0.##} {problem.Rules[rule.RuleId].Unit} {then}") : $"without it {then}",
    };
}
