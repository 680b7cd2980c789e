namespace Analytics.Simulation.Demo.Squad;

/// <summary>What training may change, each with a response of its own.</summary>
public enum TrainedQuality
{
    BodyMass,
    Squat,
    Bench,
    Clean,
    Jump,
    LongJump,
    Reactive,
    MaximalSpeed,
    TimeConstant,
    Agility,
    Throw,
}

/// <summary>How a squad responds to the season in one quality: relative change over the whole season.</summary>
/// <param name="Mean">Mean of those who respond.</param>
/// <param name="Deviation">SD between those who respond.</param>
public sealed record SquadResponse(double Mean, double Deviation)
{
    /// <summary>Share of athletes who do not respond at all, in every quality.</summary>
    public const double UnchangedShare = 1.0 / 3;

    /// <summary>Mean over the whole squad, those without a response included.</summary>
    public double OverallMean => (1 - UnchangedShare) * Mean;

    /// <summary>SD over the whole squad.</summary>
    public double OverallDeviation => Math.Sqrt((1 - UnchangedShare) * (Deviation * Deviation + UnchangedShare * Mean * Mean));

    public static SquadResponse Of(TrainedQuality quality) => quality switch
    {
        TrainedQuality.BodyMass => new(0.008, 0.018),
        TrainedQuality.Squat => new(0.085, 0.030),
        TrainedQuality.Bench => new(0.060, 0.025),
        TrainedQuality.Clean => new(0.075, 0.030),
        TrainedQuality.Jump => new(0.065, 0.035),
        TrainedQuality.LongJump => new(0.030, 0.020),
        TrainedQuality.Reactive => new(0.130, 0.060),
        TrainedQuality.MaximalSpeed => new(0.015, 0.010),
        TrainedQuality.TimeConstant => new(0.035, 0.025),
        TrainedQuality.Agility => new(0.020, 0.012),
        TrainedQuality.Throw => new(0.050, 0.025),
        _ => throw new ArgumentOutOfRangeException(nameof(quality), quality, "not a trained quality"),
    };
}
