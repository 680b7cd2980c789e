namespace Analytics.Planning.Feedback;

/// <summary>Where the load of an exercise goes next.</summary>
public enum LoadStep
{
    /// <summary>It stays.</summary>
    Hold,

    /// <summary>It goes up a step.</summary>
    Progress,

    /// <summary>It goes down a step.</summary>
    BackOff,
}

/// <summary>What the log says about the next load of one player in one exercise.</summary>
public sealed record ExerciseFeedback
{
    /// <summary>Identifier of the player.</summary>
    public required string AthleteId { get; init; }

    /// <summary>Identifier of the exercise.</summary>
    public required string ExerciseId { get; init; }

    /// <summary>Where the load goes.</summary>
    public required LoadStep Step { get; init; }

    /// <summary>Factor on the planned load: 1.025, 1 or 0.95 with the standard rules.</summary>
    public required double Factor { get; init; }

    /// <summary>Why, in words.</summary>
    public required string Reason { get; init; }

    /// <summary>Latest planned load in kg of the readings behind it, which the factor is on; null when none is known.</summary>
    public double? PlannedKilograms { get; init; }

    /// <summary>Set scheme of that load; null when none is known.</summary>
    public string? PlannedSchemeId { get; init; }

    /// <summary>Day the latest of those readings was logged; null when none tells whether the plan was done.</summary>
    public DateOnly? LoggedOn { get; init; }

    /// <summary>Whether the latest of those readings was done as planned; null when none tells.</summary>
    public bool? WasDone { get; init; }
}
