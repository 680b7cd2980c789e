using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Planning.Dose;

/// <summary>How long an exercise takes: warm-up sets, sets and the rests between them; the rest after the last set is the change to the next exercise.</summary>
public static class ExerciseTime
{
    /// <summary>Rest between warm-up sets, and before the first working set (common practice, no source).</summary>
    public static Duration WarmUpRest { get; } = Duration.FromSeconds(60);

    /// <summary>Time of an exercise with a scheme.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    /// <param name="partner">The reactive movement of a contrast pair, if any; without it there is no rest before it either.</param>
    public static Duration Of(Exercise exercise, SetScheme scheme, Exercise? partner = null)
    {
        var set = OfSet(exercise, scheme, partner).Seconds;
        var between = scheme.Kind == SchemeKind.OnTheMinute ? Math.Max(scheme.Interval.Seconds - set, 0) : scheme.Rest.Seconds;
        return Duration.FromSeconds(OfWarmUp(exercise, scheme).Seconds + scheme.Sets * set + (scheme.Sets - 1) * between);
    }

    /// <summary>Time of one working set with what belongs inside it: the rests of a cluster, rest and reactive movement of a contrast pair, both sides.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    /// <param name="partner">The reactive movement of a contrast pair, if any.</param>
    public static Duration OfSet(Exercise exercise, SetScheme scheme, Exercise? partner = null)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(scheme);
        // Each side is a cluster of its own, with its own rests.
        var inner = scheme.Kind == SchemeKind.Cluster ? (scheme.Repetitions - 1) * scheme.InnerRest.Seconds : 0;
        var lift = DoseCount.Sides(exercise) * (scheme.Repetitions * exercise.RepetitionTime.Seconds + inner);
        var second = scheme.Kind == SchemeKind.Contrast && partner is not null
            ? scheme.InnerRest.Seconds + DoseCount.Sides(partner) * scheme.PartnerRepetitions * partner.RepetitionTime.Seconds : 0;
        return Duration.FromSeconds(lift + second);
    }

    /// <summary>Time of the warm-up sets and the rest after each.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    public static Duration OfWarmUp(Exercise exercise, SetScheme scheme)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Duration.FromSeconds(WarmUpRamp.For(exercise, scheme).Sum(s => s.Repetitions * DoseCount.Sides(exercise) * exercise.RepetitionTime.Seconds + WarmUpRest.Seconds));
    }

    /// <summary>By how much a set is longer than the interval it must fit in; null where it fits, or no interval is meant. Then sets follow without any rest.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    public static Duration? Overrun(Exercise exercise, SetScheme scheme)
    {
        var set = OfSet(exercise, scheme);
        return scheme.Kind == SchemeKind.OnTheMinute && set > scheme.Interval ? set - scheme.Interval : null;
    }
}
