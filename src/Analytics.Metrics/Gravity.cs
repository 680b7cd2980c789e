using Analytics.Quantities;

namespace Analytics.Metrics;

/// <summary>The acceleration of free fall used by jump, stair and bar formulas.</summary>
public static class Gravity
{
    /// <summary>9.81 m/s², the default: the papers behind our formulas and their tables use it, so results can be held against print.</summary>
    public static Acceleration Published { get; } = Acceleration.FromMetresPerSecondSquared(9.81);

    /// <summary>Standard gravity, 9.80665 m/s². A height from flight time comes out 0.034 % lower than with <see cref="Published"/>.</summary>
    public static Acceleration Standard { get; } = Acceleration.FromMetresPerSecondSquared(UnitFactors.StandardGravity);
}
