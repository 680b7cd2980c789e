namespace Analytics.Planning.Exercises;

/// <summary>What the body does. Hard sets are counted by it.</summary>
public enum MovementPattern
{
    /// <summary>Squatting on both legs.</summary>
    Squat,

    /// <summary>Bending and straightening at the hip.</summary>
    Hinge,

    /// <summary>Lunges, split squats, step-ups.</summary>
    SingleLeg,

    /// <summary>Cleans, snatches, jerks and their pulls.</summary>
    Weightlifting,

    /// <summary>Pushing with the arms.</summary>
    Push,

    /// <summary>Pulling with the arms.</summary>
    Pull,

    /// <summary>Jumping.</summary>
    Jump,

    /// <summary>Running.</summary>
    Sprint,

    /// <summary>Throwing.</summary>
    Throw,

    /// <summary>Carrying and pushing loads over a distance.</summary>
    Carry,

    /// <summary>Bracing and turning the trunk.</summary>
    Trunk,

    /// <summary>Neck.</summary>
    Neck,
}

/// <summary>Words and groups of the patterns.</summary>
public static class MovementPatterns
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<MovementPattern> All { get; } = Enum.GetValues<MovementPattern>();

    /// <summary>In words, lower case.</summary>
    /// <param name="pattern">The pattern.</param>
    public static string Name(this MovementPattern pattern) => pattern == MovementPattern.SingleLeg ? "single leg" : pattern.ToString().ToLowerInvariant();

    /// <summary>As written in a file: <c>single_leg</c>.</summary>
    /// <param name="pattern">The pattern.</param>
    public static string Id(this MovementPattern pattern) => pattern.Name().Replace(' ', '_');

    /// <summary>Whether the legs carry the load: what "heavy lower body" counts.</summary>
    /// <param name="pattern">The pattern.</param>
    public static bool IsLowerBody(this MovementPattern pattern)
        => pattern is MovementPattern.Squat or MovementPattern.Hinge or MovementPattern.SingleLeg or MovementPattern.Weightlifting;
}
