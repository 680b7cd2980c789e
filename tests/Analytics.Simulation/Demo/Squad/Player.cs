namespace Analytics.Simulation.Demo.Squad;

/// <summary>An invented athlete with everything that is true about him.</summary>
public sealed record Player
{
    public required int Index { get; init; }
    public required string Id { get; init; }
    public required string Name { get; init; }
    public required string Position { get; init; }
    public required GroupNorm Norm { get; init; }
    public required int StatureInches { get; init; }
    public required int BirthYear { get; init; }

    /// <summary>Years of structured strength training before the season. Says nothing about gains: no response depends on it.</summary>
    public required double TrainingYears { get; init; }

    /// <summary>Ability at the first testing day.</summary>
    public required Ability Baseline { get; init; }

    /// <summary>Relative gain from the first to the last day; exactly 0 for who does not respond.</summary>
    public required IReadOnlyDictionary<TrainedQuality, double> SeasonGain { get; init; }

    /// <summary>Share of the season's gain reached by each testing day.</summary>
    public required IReadOnlyList<double> GainReached { get; init; }

    /// <summary>Loss per repetition: %1RM at r repetitions is 1 / (1 + cost (r - 1)).</summary>
    public required double RepetitionCost { get; init; }

    /// <summary>Distance the body has moved when the hand leaves the ground; 0 without the start artefact.</summary>
    public required double StartLeadMetres { get; init; }

    /// <summary>Hang clean as a share of the power clean.</summary>
    public required double HangCleanShare { get; init; }

    /// <summary>Squats and benches in sets of repetitions all season, by the coach's choice.</summary>
    public required bool LiftsInSets { get; init; }

    public string Group => Norm.Group;

    /// <summary>True ability on a testing day.</summary>
    public Ability On(int day) => Baseline.After(quality => SeasonGain[quality] * GainReached[day]);

    /// <summary>Whether a quality is exactly the same on both days.</summary>
    public bool Unchanged(TrainedQuality quality, int from, int to)
        => SeasonGain[quality] == 0 || GainReached[from] == GainReached[to];
}
