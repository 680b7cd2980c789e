using Analytics.Metrics.Strength;
using Analytics.Planning.Exercises;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Loads;

/// <summary>A warm-up set before the working sets.</summary>
/// <param name="Repetitions">Repetitions.</param>
/// <param name="Percent">Per cent of the first working load.</param>
public sealed record RampStep(int Repetitions, double Percent);

/// <summary>
/// Warm-up sets of a barbell lift: fewer repetitions and more load from step to step (steps are common practice, no source; the order easy, middle, near the load
/// follows the textbook's protocol [baechle2008], from memory).
/// </summary>
public static class WarmUpRamp
{
    /// <summary>Per cent of the 1RM from which a third step is done (common practice, no source).</summary>
    public const double HeavyFrom = 80;

    private static readonly IReadOnlyList<RampStep> s_light = [new(5, 50), new(3, 75)];
    private static readonly IReadOnlyList<RampStep> s_heavy = [new(5, 50), new(3, 70), new(1, 85)];

    /// <summary>The steps; none for what has no bar on it, and none before a scheme that builds up by itself but the first.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    /// <param name="table">Table for schemes that name only repetitions in reserve; the textbook's when null.</param>
    public static IReadOnlyList<RampStep> For(Exercise exercise, SetScheme scheme, RepetitionTable? table = null)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(scheme);
        if (exercise.Basis.Kind != LoadBasisKind.Lift || exercise.Implement != LoadableWeights.Barbell) return [];
        if (scheme.Kind == SchemeKind.Ramp) return [s_light[0]];
        return SetPercents.Of(scheme, table ?? RepetitionTables.Textbook).Percent.Any(p => p >= HeavyFrom) ? s_heavy : s_light;
    }
}
