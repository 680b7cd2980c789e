using Analytics.Planning.Plans;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>What the solver found for some units.</summary>
internal sealed record SolvedPart(CpSolverStatus Status, double Objective, double Bound, bool HitClock, IReadOnlyList<UnitSession> Sessions, IReadOnlyList<LeftOut> LeftOut)
{
    public bool HasPlan => Status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;

    /// <summary>Solves for some units.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="units">The units.</param>
    /// <param name="aid">What is known beforehand.</param>
    /// <param name="options">How long to seek.</param>
    public static SolvedPart Of(PlanProblem problem, IReadOnlyList<TrainingUnit> units, SearchAid aid, PlanOptions options)
    {
        var week = WeekModel.Of(problem, units, explain: false, aid.Others);
        week.Model.Maximize(WeekObjective.Of(week, aid.Groups));
        PlanHints.Give(week, aid.Start);
        var solver = WeekSolver.Make(options);
        var status = aid.Bound is { } known ? solver.Solve(week.Model, new StopWhenGood(known * (1 - options.GoodEnough))) : solver.Solve(week.Model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? new(status, solver.ObjectiveValue, Math.Max(solver.BestObjectiveBound, solver.ObjectiveValue), WeekSolver.HitClock(solver, options), PlanReader.Sessions(week, solver), LeftOutReasons.Of(week))
            : new(status, 0, 0, WeekSolver.HitClock(solver, options), [], []);
    }

    // The bound that is known beforehand is sharper than what the solver finds for all units together.
    private sealed class StopWhenGood(double enough) : CpSolverSolutionCallback
    {
        public override void OnSolutionCallback()
        {
            if (ObjectiveValue() >= enough) StopSearch();
        }
    }
}

/// <summary>What is known before a search.</summary>
internal sealed record SearchAid
{
    /// <summary>Plans of groups, which their restricted players follow.</summary>
    public GroupPlans Groups { get; init; } = GroupPlans.None;

    /// <summary>A plan to start from; empty for none.</summary>
    public IReadOnlyList<UnitSession> Start { get; init; } = [];

    /// <summary>Plans of units outside the search, who have their places at the stations.</summary>
    public IReadOnlyList<UnitSession> Others { get; init; } = [];

    /// <summary>What no plan of these units can pass, if known.</summary>
    public double? Bound { get; init; }
}
