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
    /// <param name="groups">Plans of groups their restricted players follow.</param>
    /// <param name="start">A plan to start from; empty for none.</param>
    /// <param name="options">How long to seek.</param>
    public static SolvedPart Of(PlanProblem problem, IReadOnlyList<TrainingUnit> units, GroupPlans groups, IReadOnlyList<UnitSession> start, PlanOptions options)
    {
        var week = WeekModel.Of(problem, units, explain: false);
        week.Model.Maximize(WeekObjective.Of(week, groups));
        PlanHints.Give(week, start);
        var solver = WeekSolver.Make(options);
        var status = solver.Solve(week.Model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? new(status, solver.ObjectiveValue, Math.Max(solver.BestObjectiveBound, solver.ObjectiveValue), WeekSolver.HitClock(solver, options), PlanReader.Sessions(week, solver), LeftOutReasons.Of(week))
            : new(status, 0, 0, WeekSolver.HitClock(solver, options), [], []);
    }
}
