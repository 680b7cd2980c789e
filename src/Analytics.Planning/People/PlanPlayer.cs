using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.Weeks;
using Analytics.Quantities;

namespace Analytics.Planning.People;

/// <summary>A player as the planner sees him.</summary>
public sealed record PlanPlayer
{
    /// <summary>Identifier.</summary>
    public required string Id { get; init; }

    /// <summary>Name. Untrusted text: always escape.</summary>
    public required string Name { get; init; }

    /// <summary>Position group.</summary>
    public required string Group { get; init; }

    /// <summary>Latest body mass; null when never measured.</summary>
    public Mass? BodyMass { get; init; }

    /// <summary>Years of structured training; null when not given.</summary>
    public double? TrainingYears { get; init; }

    /// <summary>What is known of his 1RM, by lift.</summary>
    public IReadOnlyDictionary<string, KnownMaximum> Maxima { get; init; } = new Dictionary<string, KnownMaximum>();

    /// <summary>Where the log has put the loads of exercises since their tests, by exercise.</summary>
    public IReadOnlyDictionary<string, LoggedBase> Logged { get; init; } = new Dictionary<string, LoggedBase>();

    /// <summary>What he needs, one entry a quality, of strength one for each half of the body tested; what the tests cannot say is there with its reason.</summary>
    public IReadOnlyList<QualityNeed> Needs { get; init; } = [];

    /// <summary>What he may not do.</summary>
    public IReadOnlyList<Restriction> Restrictions { get; init; } = [];
}

/// <summary>How probable it is that a player is below the target of his group in a quality.</summary>
/// <param name="Quality">Trained quality.</param>
/// <param name="Probability">0 to 1; null when the tests cannot say.</param>
/// <param name="Reason">What it rests on, or why the tests cannot say, in words.</param>
/// <param name="IsNeed">Whether the probability reaches the rule's figure, and no other test of the quality objects.</param>
public sealed record QualityNeed(TrainedQuality Quality, double? Probability, string Reason, bool IsNeed)
{
    /// <summary>Half of the body the test that speaks is about: a weak squat asks for the legs.</summary>
    public BodyHalf Half { get; init; }

    /// <summary>What it is of, in words: "maximal strength for the legs".</summary>
    public string What => Quality.Name() + Half.Words();

    /// <summary>Whether an exercise serves it.</summary>
    /// <param name="exercise">The exercise.</param>
    public bool IsServedBy(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise.Quality == Quality && (Half == BodyHalf.Any || Half == BodyHalf.Lower == exercise.Pattern.IsLowerBody());
    }
}
