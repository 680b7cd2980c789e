using Analytics.Metrics.Load;
using Analytics.Planning.Plans;

namespace Analytics.Planning.Feedback;

/// <summary>One exercise one player was to do on one day, beside what he wrote down of it.</summary>
public sealed record PlanReading
{
    /// <summary>Identifier of the player.</summary>
    public required string AthleteId { get; init; }

    /// <summary>Identifier of the exercise.</summary>
    public required string ExerciseId { get; init; }

    /// <summary>Day planned.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The rows that plan it: one, or shared and own work of the same exercise.</summary>
    public required IReadOnlyList<EarlierChoice> Planned { get; init; }

    /// <summary>Day logged: the day planned, or one before or after it; null when it was not logged.</summary>
    public DateOnly? LoggedOn { get; init; }

    /// <summary>Sets logged; empty when it was not logged.</summary>
    public IReadOnlyList<ExerciseSets> Sets { get; init; } = [];

    /// <summary>Rating of the session, 0 to 10, the hardest where there were several; null when not rated.</summary>
    public double? Rating { get; init; }

    /// <summary>Planned sets; null when a row does not say.</summary>
    public int? PlannedSets => Planned.Any(p => p.Sets is null) ? null : Planned.Sum(p => p.Sets);

    /// <summary>Sets logged, whatever their load.</summary>
    public int LoggedSets => Sets.Sum(s => s.Sets);

    /// <summary>Heaviest planned load in kg; null when a row does not say.</summary>
    public double? PlannedKilograms => Planned.Any(p => p.LoadKilograms is null) ? null : Planned.Max(p => p.LoadKilograms);

    /// <summary>Set scheme of the heaviest planned load; null when a row does not say a load, or that row no scheme.</summary>
    public string? PlannedSchemeId => PlannedKilograms is null ? null : Planned.MaxBy(p => p.LoadKilograms)!.SchemeId;
}
