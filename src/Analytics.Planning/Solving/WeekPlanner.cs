using Analytics.Planning.Plans;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>
/// Plans a week. A constraint model is solved by CP-SAT of Google OR-Tools 9.15, one thread a model and a limit in its own units of work, so that the same
/// input gives the same plan. Groups share nothing but stations, so each is planned alone first, restricted players after their group; only where
/// stations are too few are all planned together. Where no plan keeps all rules, the rules that clash are named.
/// </summary>
public static class WeekPlanner
{
    /// <summary>Plans a week.</summary>
    /// <param name="problem">Sessions, players, exercises, rules.</param>
    /// <param name="options">How long to seek; null for the usual.</param>
    /// <exception cref="ArgumentException">A session is of a kind that is not among the kinds.</exception>
    public static PlanAnswer Plan(PlanProblem problem, PlanOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(problem);
        options ??= new();
        if (problem.Sessions.FirstOrDefault(s => problem.Kinds.All(k => k.Id != s.Kind)) is { } odd)
            throw new ArgumentException($"The session on {PlaceTexts.Session(odd)} is of the kind '{odd.Kind}'. Known: {string.Join(", ", problem.Kinds.Select(k => k.Id))}.", nameof(problem));
        var units = TrainingUnit.Of(problem);
        var groups = Each([.. units.Where(u => !u.IsApart)], problem, GroupPlans.None, options);
        var followed = GroupPlans.Of(groups.SelectMany(g => g.Sessions));
        List<SolvedPart> parts = [.. groups, .. groups.TrueForAll(g => g.HasPlan) ? Each([.. units.Where(u => u.IsApart)], problem, followed, options) : []];
        if (!parts.TrueForAll(p => p.HasPlan)) return WithoutPlan(problem, parts, options);

        if (StationUse.Fits(problem, parts.SelectMany(p => p.Sessions))) return Answer(problem, parts, parts.Sum(p => p.Bound));
        var joint = SolvedPart.Of(problem, units, followed, [.. parts.SelectMany(p => p.Sessions)], options);
        return joint.HasPlan ? Answer(problem, [joint], Math.Min(joint.Bound, parts.Sum(p => p.Bound))) : WithoutPlan(problem, [joint], options);
    }

    // In parallel, yet each model by one thread and the results in order: the plan does not depend on which ends first.
    private static List<SolvedPart> Each(IReadOnlyList<TrainingUnit> units, PlanProblem problem, GroupPlans groups, PlanOptions options)
    {
        var parts = new SolvedPart[units.Count];
        Parallel.For(0, units.Count, u => parts[u] = SolvedPart.Of(problem, [units[u]], groups, [], options with { Effort = options.Effort / 4 }));
        return [.. parts];
    }

    private static PlanAnswer Answer(PlanProblem problem, IReadOnlyList<SolvedPart> parts, double bound)
    {
        var order = problem.Players.Select(p => p.Group).Distinct().ToList();
        IReadOnlyList<UnitSession> sessions = [.. parts.SelectMany(p => p.Sessions).OrderBy(s => s.Slot.Date).ThenBy(s => s.Slot.Start ?? TimeOnly.MinValue)
            .ThenBy(s => order.IndexOf(s.Group)).ThenBy(s => s.IsApart).ThenBy(s => s.Players[0], StringComparer.Ordinal)];
        return new(new WeekPlan
        {
            Monday = problem.Monday,
            Sessions = sessions,
            Quality = new(parts.Sum(p => p.Objective), bound, parts.Any(p => p.HitClock)),
            Needs = NeedsServed.Of(problem, sessions),
            LeftOut = [.. parts.SelectMany(p => p.LeftOut)],
            Flags = PlanFlags.Of(problem, sessions),
            Changes = PlanChanges.Of(problem, sessions),
        }, []);
    }

    private static PlanAnswer WithoutPlan(PlanProblem problem, List<SolvedPart> parts, PlanOptions options)
        => parts.Exists(p => p.Status == CpSolverStatus.Infeasible) ? new(null, ClashFinder.Find(problem, options))
            : new(null, [], "The search ended before a plan was found or shown to be impossible. Give it more time, or plan fewer groups at once.");
}
