using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
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
        IReadOnlyList<TrainingUnit> groups = [.. units.Where(u => !u.IsApart)], apart = [.. units.Where(u => u.IsApart)];
        var parts = Each(groups, problem, GroupPlans.None, options);
        var followed = GroupPlans.Of(parts.SelectMany(g => g.Sessions));
        if (parts.TrueForAll(g => g.HasPlan)) parts.AddRange(Each(apart, problem, followed, options));
        if (!parts.TrueForAll(p => p.HasPlan)) return WithoutPlan(problem, parts, options);

        var bound = parts.Sum(p => p.Bound);
        if (StationUse.Fits(problem, Sessions(parts))) return Answer(problem, parts, bound);
        var inTurn = InTurn(problem, [.. groups, .. apart], parts, followed, options);
        if (inTurn is not null && inTurn.Sum(p => p.Objective) >= bound * (1 - options.GoodEnough)) return Answer(problem, inTurn, bound);
        var joint = Joint(problem, units, new() { Groups = followed, Start = Sessions(inTurn ?? parts), Bound = bound }, options with { Effort = inTurn is null ? options.Effort : options.Effort / 3 });
        if (joint.HasPlan && joint.Objective > (inTurn?.Sum(p => p.Objective) ?? double.MinValue)) return Answer(problem, [joint], Math.Min(joint.Bound, bound));
        return inTurn is not null ? Answer(problem, inTurn, bound) : WithoutPlan(problem, [joint], options);
    }

    // In parallel, yet each model by one thread and the results in order: the plan does not depend on which ends first.
    private static List<SolvedPart> Each(IReadOnlyList<TrainingUnit> units, PlanProblem problem, GroupPlans groups, PlanOptions options)
    {
        var parts = new SolvedPart[units.Count];
        Parallel.For(0, units.Count, u => parts[u] = SolvedPart.Of(problem, [units[u]], new() { Groups = groups }, options with { Effort = options.Effort / 6 }));
        return [.. parts];
    }

    /// <summary>Gives the places at the stations in turn, large groups first: who finds his taken plans around it. Null when somebody cannot.</summary>
    private static List<SolvedPart>? InTurn(PlanProblem problem, IReadOnlyList<TrainingUnit> units, List<SolvedPart> alone, GroupPlans groups, PlanOptions options)
    {
        var parts = new SolvedPart?[units.Count];
        foreach (var u in Enumerable.Range(0, units.Count).OrderByDescending(u => units[u].Players.Count).ThenBy(u => u))
        {
            var others = Sessions(parts.OfType<SolvedPart>());
            var part = StationUse.Fits(problem, [.. others, .. alone[u].Sessions]) ? alone[u]
                : SolvedPart.Of(problem, [units[u]], new() { Groups = groups, Start = alone[u].Sessions, Others = others }, options with { Effort = options.Effort / 6 });
            if (!part.HasPlan) return null;
            parts[u] = part;
        }

        return [.. parts.OfType<SolvedPart>()];
    }

    // Two searches that begin differently, one a core; the better one counts, the first where they are alike.
    private static SolvedPart Joint(PlanProblem problem, IReadOnlyList<TrainingUnit> units, SearchAid aid, PlanOptions options)
    {
        var found = new SolvedPart[2];
        Parallel.For(0, found.Length, i => found[i] = SolvedPart.Of(problem, units, aid, options with { Seed = options.Seed + i }));
        var bound = found.Where(f => f.HasPlan).Select(f => f.Bound).DefaultIfEmpty(0).Min();
        return found.OrderByDescending(f => f.HasPlan).ThenByDescending(f => f.Objective).First() with { Bound = bound };
    }

    private static IReadOnlyList<UnitSession> Sessions(IEnumerable<SolvedPart> parts) => [.. parts.SelectMany(p => p.Sessions)];

    private static PlanAnswer Answer(PlanProblem problem, IReadOnlyList<SolvedPart> parts, double bound)
    {
        var order = problem.Players.Select(p => p.Group).Distinct().ToList();
        IReadOnlyList<UnitSession> sessions = [.. Sessions(parts).OrderBy(s => s.Slot.Date).ThenBy(s => s.Slot.Start ?? TimeOnly.MinValue)
            .ThenBy(s => order.IndexOf(s.Group)).ThenBy(s => s.IsApart).ThenBy(s => s.Players[0], StringComparer.Ordinal)];
        return new(new WeekPlan
        {
            Monday = problem.Monday,
            Sessions = sessions,
            Quality = new(parts.Sum(p => p.Objective), bound, parts.Any(p => p.HitClock)),
            Needs = NeedsServed.Of(problem, sessions),
            LeftOut = [.. parts.SelectMany(p => p.LeftOut)],
            Flags = [.. PlanCheck.Of(problem, sessions).Where(f => problem.Rules[f.RuleId].Handling == RuleHandling.Flag)],
            Changes = PlanChanges.Of(problem, sessions),
        }, []);
    }

    private static PlanAnswer WithoutPlan(PlanProblem problem, List<SolvedPart> parts, PlanOptions options)
    {
        var clashes = parts.Exists(p => p.Status == CpSolverStatus.Infeasible) ? ClashFinder.Find(problem, options) : [];
        return new(null, clashes, clashes.Count > 0 ? null : "The search ended before a plan was found or shown to be impossible. Give it more time, or plan fewer groups at once.");
    }
}
