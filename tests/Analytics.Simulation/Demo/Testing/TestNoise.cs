using Analytics.Simulation.Demo.Squad;

namespace Analytics.Simulation.Demo.Testing;

/// <summary>
/// How far a result strays from ability, as relative SD: from day to day, and from trial to trial within a day.
/// Sizes follow published typical errors: 1RM 2-3 % (Grgic 2020 median CV 4.2 %), jump height 4-6 % between days,
/// 40 m times 0.7-1.0 % (Haugen 2012).
/// </summary>
/// <param name="Day">Day to day.</param>
/// <param name="Trial">Trial to trial.</param>
/// <param name="Attempts">Attempts a day.</param>
public sealed record TestNoise(double Day, double Trial, int Attempts)
{
    public static readonly TestNoise BodyMass = new(0.006, 0, 1);
    public static readonly TestNoise Squat = new(0.025, 0, 1);
    public static readonly TestNoise Bench = new(0.021, 0, 1);
    public static readonly TestNoise Clean = new(0.025, 0, 1);
    public static readonly TestNoise Jump = new(0.028, 0.030, 3);
    public static readonly TestNoise LongJump = new(0.014, 0.018, 3);
    public static readonly TestNoise Rebound = new(0.035, 0.040, 3);
    public static readonly TestNoise Contact = new(0.028, 0.040, 3);
    public static readonly TestNoise Speed = new(0.0055, 0.005, 2);
    public static readonly TestNoise TimeConstant = new(0.015, 0.015, 2);
    public static readonly TestNoise Agility = new(0.010, 0.011, 2);
    public static readonly TestNoise Throw = new(0.020, 0.026, 3);
    public static readonly TestNoise Stair = new(0.015, 0.020, 2);

    /// <summary>SD of a gate's reading (dual beam), s.</summary>
    public const double GateSeconds = 0.008;

    /// <summary>SD of the start lead from run to run, m.</summary>
    public const double StartLeadMetres = 0.03;

    /// <summary>
    /// Relative SD of a day's score round ability: day noise, and trial noise of the best of the day's attempts
    /// (variance of the largest of two or three normal values: 0.682 and 0.559; Harter 1961).
    /// </summary>
    public double OfBest => Math.Sqrt(Day * Day + Trial * Trial * Attempts switch { 1 => 1, 2 => 0.682, _ => 0.559 });

    /// <summary>The same for the mean of the day's attempts.</summary>
    public double OfMean => Math.Sqrt(Day * Day + Trial * Trial / Attempts);

    /// <summary>
    /// The error of the day's score, as a share, by which true changes are sized: best or mean of the attempts as usual for
    /// the test. Top speed and time constant come from a fit, whose own error is larger than the athlete's
    /// variation; their figures are what retest days show.
    /// </summary>
    public static double DayScoreError(TrainedQuality quality) => quality switch
    {
        TrainedQuality.BodyMass => BodyMass.OfBest,
        TrainedQuality.Squat => Squat.OfBest,
        TrainedQuality.Bench => Bench.OfBest,
        TrainedQuality.Clean => Clean.OfBest,
        TrainedQuality.Jump => Jump.OfBest,
        TrainedQuality.LongJump => LongJump.OfBest,
        TrainedQuality.Reactive => Math.Sqrt(Rebound.OfMean * Rebound.OfMean + Contact.OfMean * Contact.OfMean),
        TrainedQuality.MaximalSpeed => 0.0095,
        TrainedQuality.TimeConstant => 0.052,
        TrainedQuality.Agility => Agility.OfBest,
        TrainedQuality.Throw => Throw.OfBest,
        _ => throw new ArgumentOutOfRangeException(nameof(quality), quality, "not a trained quality"),
    };
}
