using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Planning.Dose;

/// <summary>How long an exercise takes: warm-up sets, sets and the rests between them; the rest after the last set is the change to the next exercise.</summary>
public static class ExerciseTime
{
    /// <summary>Rest between warm-up sets (common practice, no source).</summary>
    public static Duration WarmUpRest { get; } = Duration.FromSeconds(60);

    /// <summary>Time of an exercise with a scheme.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    /// <param name="partner">The reactive movement of a contrast pair, if any.</param>
    public static Duration Of(Exercise exercise, SetScheme scheme, Exercise? partner = null)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(scheme);
        var repetition = exercise.RepetitionTime.Seconds * DoseCount.Sides(exercise);
        var set = scheme.Repetitions * repetition + scheme.Kind switch
        {
            SchemeKind.Cluster => (scheme.Repetitions - 1) * scheme.InnerRest.Seconds,
            SchemeKind.Contrast => scheme.InnerRest.Seconds + (partner is null ? 0 : scheme.PartnerRepetitions * partner.RepetitionTime.Seconds * DoseCount.Sides(partner)),
            _ => 0,
        };
        var between = scheme.Kind == SchemeKind.OnTheMinute ? Math.Max(scheme.Interval.Seconds - set, 0) : scheme.Rest.Seconds;
        var warmUp = WarmUpRamp.For(exercise, scheme).Sum(s => s.Repetitions * repetition + WarmUpRest.Seconds);
        return Duration.FromSeconds(warmUp + scheme.Sets * set + (scheme.Sets - 1) * between);
    }
}
