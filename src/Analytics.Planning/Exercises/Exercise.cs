using Analytics.Quantities;

namespace Analytics.Planning.Exercises;

/// <summary>An entry of the exercise catalogue. The shipped ones are common practice, no source, and meant to be edited.</summary>
public sealed record Exercise
{
    /// <summary>Identifier, lower case with underscores. Where it is the identifier of a tested lift, that test gives the load.</summary>
    public required string Id { get; init; }

    /// <summary>Name in trade terms. Untrusted text: always escape.</summary>
    public required string Name { get; init; }

    /// <summary>Movement pattern.</summary>
    public required MovementPattern Pattern { get; init; }

    /// <summary>Quality trained.</summary>
    public required TrainedQuality Quality { get; init; }

    /// <summary>What the load is a share of.</summary>
    public LoadBasis Basis { get; init; } = LoadBasis.None;

    /// <summary>The exercise's own 1RM in per cent of the basis lift's; 100 for the lift itself. Only with a lift as basis.</summary>
    public double OwnMaximumPercent { get; init; } = 100;

    /// <summary>Lightest use, per cent: of its own 1RM with a lift as basis, else of body mass.</summary>
    public double? LeastPercent { get; init; }

    /// <summary>Heaviest use, per cent, at least <see cref="LeastPercent"/>.</summary>
    public double? MostPercent { get; init; }

    /// <summary>Lowest height; only with height as basis.</summary>
    public Length? LeastHeight { get; init; }

    /// <summary>Greatest height, at least <see cref="LeastHeight"/>.</summary>
    public Length? MostHeight { get; init; }

    /// <summary>Whether each side is done for itself; a set then takes twice the time.</summary>
    public bool IsUnilateral { get; init; }

    /// <summary>Time of one repetition (of one side).</summary>
    public required Duration RepetitionTime { get; init; }

    /// <summary>Ground contacts of one repetition (of one side), 0 or more.</summary>
    public int JumpContacts { get; init; }

    /// <summary>How hard the landings are.</summary>
    public Impact Impact { get; init; }

    /// <summary>Stations it is done at, all of them: <c>rack</c>, <c>platform</c>; empty when a floor is enough.</summary>
    public IReadOnlyList<string> Stations { get; init; } = [];

    /// <summary>What is loaded: <c>barbell</c>, <c>dumbbell</c>, <c>medicine_ball</c>, <c>sled</c>; null when nothing is.</summary>
    public string? Implement { get; init; }

    /// <summary>1 a staple, 2 usual, 3 now and then. Staples come first where nothing else decides.</summary>
    public int Preference { get; init; } = 2;

    /// <summary>Least back squat 1RM in body masses a player must have shown; null for none.</summary>
    public double? LeastSquatRatio { get; init; }

    /// <summary>Greatest body mass of a player who does it; null for none.</summary>
    public Mass? MostBodyMass { get; init; }

    /// <summary>Least years of structured training; null for none.</summary>
    public double? LeastTrainingYears { get; init; }

    /// <summary>What must be there before, in words. Untrusted text: always escape.</summary>
    public string Prerequisite { get; init; } = "";

    /// <summary>Caution, in words. Untrusted text: always escape.</summary>
    public string Caution { get; init; } = "";
}
