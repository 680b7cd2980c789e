namespace Analytics.Metrics.Motion;

/// <summary>Second-order low-pass filters.</summary>
public enum FilterShape
{
    /// <summary>Butterworth: flattest pass band, a little overshoot.</summary>
    Butterworth,

    /// <summary>Critically damped: no overshoot, rounder corner.</summary>
    CriticallyDamped,
}

/// <summary>What stands before the first and after the last sample.</summary>
public enum EndPadding
{
    /// <summary>Nine samples reflected through the end point (2·x₀ − x₉ … 2·x₀ − x₁), each pass starting in steady state. Needs 10 samples.</summary>
    OddNine,

    /// <summary>Nothing; each pass starts from 0. Damages the ends; here for comparison with print.</summary>
    None,
}
