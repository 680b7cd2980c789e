using Analytics.Planning.Exercises;
using Analytics.Quantities;

namespace Analytics.Planning.Schemes;

/// <summary>How sets follow each other.</summary>
public enum SchemeKind
{
    /// <summary>The same load in every set, rest between.</summary>
    Straight,

    /// <summary>Short rests inside a set.</summary>
    Cluster,

    /// <summary>A set begins at each full interval, a minute as a rule; what is left of it is rest.</summary>
    OnTheMinute,

    /// <summary>The load goes up from set to set to the top set.</summary>
    Ramp,

    /// <summary>A heavy set, a stated rest, then a reactive movement.</summary>
    Contrast,
}

/// <summary>Sets, repetitions, load and rest. The shipped ones are common practice, no source, unless they name one.</summary>
public sealed record SetScheme
{
    /// <summary>Identifier, lower case with underscores.</summary>
    public required string Id { get; init; }

    /// <summary>Name. Untrusted text: always escape.</summary>
    public required string Name { get; init; }

    /// <summary>How the sets follow each other.</summary>
    public SchemeKind Kind { get; init; }

    /// <summary>Qualities it serves.</summary>
    public required IReadOnlyList<TrainedQuality> Qualities { get; init; }

    /// <summary>Patterns it is for; empty for all.</summary>
    public IReadOnlyList<MovementPattern> Patterns { get; init; } = [];

    /// <summary>Sets, 1 or more.</summary>
    public required int Sets { get; init; }

    /// <summary>Repetitions of each set, of each side where <see cref="IsEachSide"/>, 1 or more.</summary>
    public required int Repetitions { get; init; }

    /// <summary>Whether it is for exercises done on each side for itself; null for both kinds.</summary>
    public bool? IsEachSide { get; init; }

    /// <summary>Per cent of the exercise's own 1RM of the lightest working set; null where no per cent is meant.</summary>
    public double? LeastPercent { get; init; }

    /// <summary>Per cent of the heaviest working set; the same as <see cref="LeastPercent"/> where the load stays.</summary>
    public double? MostPercent { get; init; }

    /// <summary>Good repetitions to be left at the end of a set; null where speed ends the set.</summary>
    public double? Reserve { get; init; }

    /// <summary>Rest between sets; with <see cref="SchemeKind.OnTheMinute"/> not used.</summary>
    public Duration Rest { get; init; }

    /// <summary>Time from the start of a set to the start of the next; only with <see cref="SchemeKind.OnTheMinute"/>.</summary>
    public Duration Interval { get; init; }

    /// <summary>Rest between the repetitions of a cluster, or between the heavy lift and the reactive movement of a contrast pair.</summary>
    public Duration InnerRest { get; init; }

    /// <summary>Repetitions of the reactive movement of a contrast pair; 0 otherwise.</summary>
    public int PartnerRepetitions { get; init; }

    /// <summary>1 a staple, 2 usual, 3 now and then. Staples come first where nothing else decides.</summary>
    public int Preference { get; init; } = 2;

    /// <summary>Source key, or "common practice, no source".</summary>
    public string Source { get; init; } = CommonPractice;

    /// <summary>What stands where a fact of the trade has no source.</summary>
    public const string CommonPractice = "common practice, no source";

    /// <summary>Repetitions of all sets, of one side.</summary>
    public int TotalRepetitions => Sets * Repetitions;

    private const double Rounding = 1e-9;

    /// <summary>
    /// Whether an exercise can be done so: quality, pattern, one side or both, and its load. A scheme in per cent needs a lift that takes them, one without any an exercise
    /// without a lift, or repetitions in reserve.
    /// </summary>
    /// <param name="exercise">The exercise.</param>
    public bool Fits(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        if (!Qualities.Contains(exercise.Quality) || (Patterns.Count > 0 && !Patterns.Contains(exercise.Pattern)) || (IsEachSide is { } each && each != exercise.IsUnilateral)) return false;
        var byLift = exercise.Basis.Kind == LoadBasisKind.Lift;
        if (MostPercent is not { } most) return !byLift || Reserve is not null;
        return byLift && most <= (exercise.MostPercent ?? 100) + Rounding && (LeastPercent ?? most) >= (exercise.LeastPercent ?? 0) - Rounding;
    }
}
