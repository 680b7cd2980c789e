using Analytics.Metrics.Strength;
using Analytics.Planning.Exercises;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Planning.Loads;

/// <summary>The steps of the warm-up as loads.</summary>
internal static class WarmUpLoads
{
    /// <summary>Rounded down, at least the bar, strictly rising, below the first working load; steps that coincide are dropped.</summary>
    public static IReadOnlyList<RampSet> Of(Exercise exercise, SetScheme scheme, Mass firstWorking, LoadableWeights weights, RepetitionTable table)
    {
        List<RampSet> sets = [];
        foreach (var step in WarmUpRamp.For(exercise, scheme, table))
        {
            var load = weights.Down(firstWorking * (step.Percent / 100)) ?? weights.All[0];
            if (load < firstWorking && (sets.Count == 0 || load > sets[^1].Load)) sets.Add(new(step.Repetitions, load));
        }

        return sets;
    }
}
