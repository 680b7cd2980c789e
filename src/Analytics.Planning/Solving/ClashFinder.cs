using Analytics.Planning.Plans;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>
/// Names the rules that cannot all be kept. From a set the solver shows to clash, rules are taken away one by one as long as the rest still clashes;
/// what stays is minimal: without any one of it the others can be kept. Where that gives no plan because others clash too, those are named as well.
/// </summary>
internal static class ClashFinder
{
    /// <summary>Most clashes told at once.</summary>
    public const int Most = 5;

    public static IReadOnlyList<RuleClash> Find(PlanProblem problem, PlanOptions options)
    {
        var week = WeekModel.Of(problem, TrainingUnit.Of(problem), explain: true);
        var all = week.Rules.Refusing.ToList();
        if (Try(week, all, options).Clash is not { } first) return [];
        List<List<RuleAtPlace>> found = [Smallest(week, first, options)];
        var without = new Dictionary<RuleAtPlace, Trial>();
        for (var i = 0; i < found.Count; i++)
        {
            foreach (var rule in found[i].Where(r => !without.ContainsKey(r)))
            {
                without[rule] = Try(week, [.. all.Where(r => r != rule)], options);
                // Where a clash is known that does without the rule, nothing new is to be learnt.
                if (without[rule].Clash is { } other && found.Count < Most && found.TrueForAll(f => f.Contains(rule))) found.Add(Smallest(week, other, options));
            }
        }

        return [.. found.Select(clash => new RuleClash(clash, [.. clash.Select(r => Relief(clash, r))]))];

        Relaxation Relief(List<RuleAtPlace> clash, RuleAtPlace rule)
        {
            if (without[rule].CanBeKept) return ClashRelief.GivesPlan(problem, all, rule, options);
            // What it does to this clash shows once the others are out of the way.
            List<RuleAtPlace> alone = [.. all.Where(r => clash.Contains(r) || !found.Exists(f => f.Contains(r)))];
            return Try(week, [.. alone.Where(r => r != rule)], options).CanBeKept ? ClashRelief.Settles(problem, alone, rule, options) : ClashRelief.None(rule);
        }
    }

    /// <summary>Whether a plan keeps these rules, whatever the others.</summary>
    public static bool CanKeep(WeekModel week, IReadOnlyList<RuleAtPlace> rules, PlanOptions options) => Try(week, rules, options).CanBeKept;

    // Two orders of taking away may end at different minimal sets; the smaller is easier to read.
    private static List<RuleAtPlace> Smallest(WeekModel week, List<RuleAtPlace> core, PlanOptions options)
    {
        var forward = Shrink(week, core, options);
        if (forward.Count <= 2) return forward;
        var backward = Shrink(week, [.. core.AsEnumerable().Reverse()], options);
        backward.Reverse();
        return backward.Count < forward.Count ? backward : forward;
    }

    private static List<RuleAtPlace> Shrink(WeekModel week, List<RuleAtPlace> core, PlanOptions options)
    {
        var clash = core.ToList();
        foreach (var rule in core)
        {
            if (!clash.Contains(rule)) continue;
            List<RuleAtPlace> rest = [.. clash.Where(r => r != rule)];
            if (Try(week, rest, options).Clash is { } smaller) clash = [.. rest.Where(smaller.Contains)];
        }

        return clash;
    }

    private static Trial Try(WeekModel week, IReadOnlyList<RuleAtPlace> rules, PlanOptions options)
    {
        week.Model.ClearAssumptions();
        week.Model.AddAssumptions(rules.Select(week.Rules.Switch));
        var solver = WeekSolver.Make(options);
        var status = solver.Solve(week.Model);
        if (status != CpSolverStatus.Infeasible) return new(status is CpSolverStatus.Optimal or CpSolverStatus.Feasible, null);
        var indices = solver.SufficientAssumptionsForInfeasibility().ToHashSet();
        return new(false, [.. rules.Where(r => indices.Contains(week.Rules.Switch(r).GetIndex()))]);
    }

    /// <summary>What the solver says of some rules; neither when its work ran out.</summary>
    private sealed record Trial(bool CanBeKept, List<RuleAtPlace>? Clash);
}
