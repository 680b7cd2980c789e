using Analytics.Quantities;

namespace Analytics.Metrics.Trials;

/// <summary>How a time was taken. Methods are different scales and never merged.</summary>
public enum TimingMethod
{
    /// <summary>Electronic gates.</summary>
    Electronic,

    /// <summary>Stopwatch.</summary>
    Hand,

    /// <summary>Counted video frames.</summary>
    Video,
}

/// <summary>What starts the clock.</summary>
public enum StartType
{
    /// <summary>Standing start; the athlete's body trips the first beam.</summary>
    StandingBeam,

    /// <summary>Three-point start; the clock starts when the hand leaves the ground.</summary>
    ThreePointHand,

    /// <summary>The clock starts at first visible movement.</summary>
    FirstMovement,

    /// <summary>The clock starts at a signal; reaction time is inside.</summary>
    Signal,
}

/// <summary>A time at a distance from the start.</summary>
/// <param name="Distance">Distance of the gate from the start line, above 0.</param>
/// <param name="Time">Time since the clock started, above 0.</param>
public readonly record struct Split(Length Distance, Duration Time);

/// <summary>One sprint with its splits.</summary>
public sealed record SprintTrial : Trial
{
    /// <summary>How the times were taken.</summary>
    public required TimingMethod Timing { get; init; }

    /// <summary>What started the clock.</summary>
    public required StartType Start { get; init; }

    /// <summary>Splits, by rising distance and rising time.</summary>
    public required IReadOnlyList<Split> Splits { get; init; }

    /// <summary>Time at a gate, if that gate was there.</summary>
    /// <param name="distance">Distance of the gate; matched to 1 cm.</param>
    public Duration? TimeAt(Length distance)
    {
        foreach (var split in Splits)
            if (Math.Abs(split.Distance.Metres - distance.Metres) < 0.01) return split.Time;
        return null;
    }
}
