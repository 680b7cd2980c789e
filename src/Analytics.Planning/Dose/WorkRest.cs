using Analytics.Planning.Exercises;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Planning.Dose;

/// <summary>
/// Rest after an all-out effort as a multiple of its time: 12 to 20 times for efforts up to 10 s [baechle2008; from memory]. A guide, no limit.
/// </summary>
/// <param name="Work">Time of one set.</param>
/// <param name="Rest">Rest after it.</param>
/// <param name="Least">Shortest rest of the guide; null where the effort is longer than the guide is for.</param>
/// <param name="Most">Longest rest of the guide.</param>
public sealed record WorkRest(Duration Work, Duration Rest, Duration? Least, Duration? Most)
{
    /// <summary>Least multiple.</summary>
    public const double LeastRatio = 12;

    /// <summary>Greatest multiple.</summary>
    public const double MostRatio = 20;

    /// <summary>Longest effort the guide is for.</summary>
    public static Duration LongestWork { get; } = Duration.FromSeconds(10);

    /// <summary>Whether the rest is long enough; longer than the guide's is no fault. Null where the guide does not speak.</summary>
    public bool? IsEnough => Least is { } least ? Rest.Seconds >= least.Seconds - 1e-9 : null;

    /// <summary>Rest for an effort.</summary>
    /// <param name="work">Time of the effort.</param>
    /// <param name="ratio">Multiple.</param>
    public static Duration RestFor(Duration work, double ratio) => work * ratio;

    /// <summary>Work and rest of a scheme; null for what is no sprint.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    public static WorkRest? Of(Exercise exercise, SetScheme scheme)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(scheme);
        if (exercise.Pattern != MovementPattern.Sprint) return null;
        // Between the repetitions of a cluster there is the short rest, and that is the one to judge.
        var isCluster = scheme.Kind == SchemeKind.Cluster && scheme.Repetitions > 1;
        var work = isCluster ? exercise.RepetitionTime : ExerciseTime.OfSet(exercise, scheme);
        var rest = isCluster ? scheme.InnerRest
            : scheme.Kind == SchemeKind.OnTheMinute ? Duration.FromSeconds(Math.Max(0, scheme.Interval.Seconds - work.Seconds)) : scheme.Rest;
        return work.Seconds > LongestWork.Seconds ? new(work, rest, null, null) : new(work, rest, RestFor(work, LeastRatio), RestFor(work, MostRatio));
    }
}
