using Analytics.Quantities;

namespace Analytics.Metrics.Trials;

/// <summary>The kind of jump.</summary>
public enum JumpKind
{
    /// <summary>Countermovement jump.</summary>
    Countermovement,

    /// <summary>Squat jump, from a held start.</summary>
    Squat,

    /// <summary>Drop jump from a box.</summary>
    Drop,

    /// <summary>Rebound over a hurdle.</summary>
    Hurdle,

    /// <summary>Standing long (broad) jump.</summary>
    StandingLong,
}

/// <summary>How the jump was measured. Methods are different scales and never merged.</summary>
public enum JumpMethod
{
    /// <summary>Contact mat: height from flight time.</summary>
    Mat,

    /// <summary>Force plate.</summary>
    ForcePlate,

    /// <summary>Jump and reach (vane or wall).</summary>
    Reach,

    /// <summary>Flight time counted from video frames.</summary>
    Video,

    /// <summary>Tape on the ground, for distances.</summary>
    Tape,
}

/// <summary>One jump.</summary>
public sealed record JumpTrial : Trial
{
    /// <summary>Kind of jump.</summary>
    public required JumpKind Kind { get; init; }

    /// <summary>How it was measured.</summary>
    public required JumpMethod Method { get; init; }

    /// <summary>Jump height as read from the device, if it gives one.</summary>
    public Length? Height { get; init; }

    /// <summary>Distance, for a standing long jump.</summary>
    public Length? Distance { get; init; }

    /// <summary>Flight time.</summary>
    public Duration? FlightTime { get; init; }

    /// <summary>Ground contact time, for drop and hurdle jumps.</summary>
    public Duration? ContactTime { get; init; }

    /// <summary>Height of the box or hurdle.</summary>
    public Length? ObstacleHeight { get; init; }

    /// <summary>Push-off distance: leg length with pointed foot less start height.</summary>
    public Length? PushOffDistance { get; init; }
}
