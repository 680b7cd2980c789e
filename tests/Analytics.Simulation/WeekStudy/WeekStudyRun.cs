using Analytics.Planning.Solving;

namespace Analytics.Simulation.WeekStudy;

/// <summary>Plans the week of many generated squads.</summary>
public static class WeekStudyRun
{
    /// <summary>The squads one after the other, in the order of their seeds: the planner takes the processor's cores by itself.</summary>
    /// <param name="squads">How many squads.</param>
    /// <param name="seed">Seed of the first; squad i has seed + i.</param>
    /// <param name="options">How long a plan is sought.</param>
    /// <param name="threads">Squads worked at once; what comes out does not depend on it.</param>
    /// <param name="progress">Told how many are done.</param>
    public static IReadOnlyList<WeekOutcome> Run(int squads, ulong seed, PlanOptions options, int threads, Action<int>? progress = null)
    {
        var (outcomes, done) = (new WeekOutcome[squads], 0);
        Parallel.For(0, squads, new ParallelOptions { MaxDegreeOfParallelism = threads }, i =>
        {
            outcomes[i] = WeekOutcome.Of(seed + (ulong)i, options);
            progress?.Invoke(Interlocked.Increment(ref done));
        });
        return outcomes;
    }
}
