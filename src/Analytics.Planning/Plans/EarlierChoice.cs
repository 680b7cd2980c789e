namespace Analytics.Planning.Plans;

/// <summary>What a row of an earlier plan asks for.</summary>
public enum ChoiceForce
{
    /// <summary>It was planned; keep it where nothing speaks against it.</summary>
    Planned,

    /// <summary>It stays.</summary>
    Keep,

    /// <summary>It must not come.</summary>
    Never,
}

/// <summary>A row of <c>plan.csv</c>: what an earlier plan chose, or the coach.</summary>
public sealed record EarlierChoice
{
    /// <summary>Day.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Start of the session it is for; null for any one session of the day.</summary>
    public TimeOnly? Start { get; init; }

    /// <summary>Group; null when the row names a player.</summary>
    public string? Group { get; init; }

    /// <summary>Player; null when the row names a group.</summary>
    public string? AthleteId { get; init; }

    /// <summary>Identifier of the exercise.</summary>
    public required string ExerciseId { get; init; }

    /// <summary>Identifier of the set scheme; null for any.</summary>
    public string? SchemeId { get; init; }

    /// <summary>Whether it was own work rather than the shared part.</summary>
    public bool IsOwnWork { get; init; }

    /// <summary>What it asks for.</summary>
    public ChoiceForce Force { get; init; }

    /// <summary>Planned sets; null when the row does not say.</summary>
    public int? Sets { get; init; }

    /// <summary>Planned repetitions; null when the row does not say.</summary>
    public int? Repetitions { get; init; }

    /// <summary>Planned load of the top set in kg; null when the row does not say.</summary>
    public double? LoadKilograms { get; init; }

    /// <summary>Where the row stands, for messages.</summary>
    public string Place { get; init; } = "";
}
