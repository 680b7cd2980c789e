using Analytics.Planning.Exercises;

namespace Analytics.Planning.People;

/// <summary>Something a player may not do for a while, as local staff have said.</summary>
public sealed record Restriction
{
    /// <summary>Identifier of the player.</summary>
    public required string AthleteId { get; init; }

    /// <summary>First day.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Last day; null while it lasts.</summary>
    public DateOnly? To { get; init; }

    /// <summary>A pattern that is out; null when none is named.</summary>
    public MovementPattern? Pattern { get; init; }

    /// <summary>A quality that is out; null when none is named.</summary>
    public TrainedQuality? Quality { get; init; }

    /// <summary>Identifier of an exercise that is out; null when none is named.</summary>
    public string? ExerciseId { get; init; }

    /// <summary>Whether everything is out.</summary>
    public bool IsEverything { get; init; }

    /// <summary>Note. Untrusted text: always escape.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether it forbids an exercise on a day.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="day">The day.</param>
    public bool Forbids(Exercise exercise, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return day >= From && (To is null || day <= To)
            && (IsEverything || exercise.Pattern == Pattern || exercise.Quality == Quality || exercise.Id == ExerciseId);
    }
}
