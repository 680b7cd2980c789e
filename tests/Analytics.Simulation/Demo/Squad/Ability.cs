namespace Analytics.Simulation.Demo.Squad;

/// <summary>What an athlete can truly do on a day: the expected result, free of luck and of measurement error.</summary>
public sealed record Ability
{
    public required double MassPounds { get; init; }
    public required double SquatPounds { get; init; }
    public required double BenchPounds { get; init; }
    public required double CleanPounds { get; init; }
    public required double JumpInches { get; init; }
    public required double LongJumpInches { get; init; }
    public required double DropJumpInches { get; init; }
    public required double ContactMilliseconds { get; init; }
    public required double SpeedMetresPerSecond { get; init; }
    public required double TimeConstantSeconds { get; init; }
    public required double AgilitySeconds { get; init; }
    public required double ThrowMetres { get; init; }
    public required double StairSeconds { get; init; }

    /// <summary>Height of the rebound in metres over contact time in seconds.</summary>
    public double ReactiveIndex => DropJumpInches * 0.0254 / (ContactMilliseconds / 1000);

    /// <summary>This ability after relative gains; a gain always means better, so times fall.</summary>
    public Ability After(Func<TrainedQuality, double> gain) => this with
    {
        MassPounds = MassPounds * (1 + gain(TrainedQuality.BodyMass)),
        SquatPounds = SquatPounds * (1 + gain(TrainedQuality.Squat)),
        BenchPounds = BenchPounds * (1 + gain(TrainedQuality.Bench)),
        CleanPounds = CleanPounds * (1 + gain(TrainedQuality.Clean)),
        JumpInches = JumpInches * (1 + gain(TrainedQuality.Jump)),
        LongJumpInches = LongJumpInches * (1 + gain(TrainedQuality.LongJump)),
        DropJumpInches = DropJumpInches * (1 + 0.5 * gain(TrainedQuality.Reactive)),
        ContactMilliseconds = ContactMilliseconds * (1 + 0.5 * gain(TrainedQuality.Reactive)) / (1 + gain(TrainedQuality.Reactive)),
        SpeedMetresPerSecond = SpeedMetresPerSecond * (1 + gain(TrainedQuality.MaximalSpeed)),
        TimeConstantSeconds = TimeConstantSeconds * (1 - gain(TrainedQuality.TimeConstant)),
        AgilitySeconds = AgilitySeconds * (1 - gain(TrainedQuality.Agility)),
        ThrowMetres = ThrowMetres * (1 + gain(TrainedQuality.Throw)),
    };
}
