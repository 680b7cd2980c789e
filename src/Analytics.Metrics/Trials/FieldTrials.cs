using Analytics.Quantities;

namespace Analytics.Metrics.Trials;

/// <summary>Side of the body or of the first turn.</summary>
public enum Side
{
    /// <summary>Left.</summary>
    Left,

    /// <summary>Right.</summary>
    Right,
}

/// <summary>One change-of-direction run.</summary>
public sealed record AgilityTrial : Trial
{
    /// <summary>Test identifier: <c>pro_agility</c> (5-10-5), <c>505</c>, <c>three_cone</c>.</summary>
    public required string Test { get; init; }

    /// <summary>How the time was taken.</summary>
    public required TimingMethod Timing { get; init; }

    /// <summary>Time of the run.</summary>
    public required Duration Time { get; init; }

    /// <summary>Side of the first turn, if noted.</summary>
    public Side? Side { get; init; }
}

/// <summary>One medicine-ball throw.</summary>
public sealed record ThrowTrial : Trial
{
    /// <summary>Throw identifier: <c>overhead_back</c>, <c>seated_chest</c>, <c>standing_chest</c>, <c>rotational</c>.</summary>
    public required string Throw { get; init; }

    /// <summary>Mass of the ball.</summary>
    public required Mass Ball { get; init; }

    /// <summary>Distance thrown.</summary>
    public required Length Distance { get; init; }

    /// <summary>Side, for a rotational throw.</summary>
    public Side? Side { get; init; }
}

/// <summary>One stair run for power.</summary>
public sealed record StairTrial : Trial
{
    /// <summary>Vertical rise between the timed steps, measured on these stairs.</summary>
    public required Length Rise { get; init; }

    /// <summary>Time between those steps.</summary>
    public required Duration Time { get; init; }
}
