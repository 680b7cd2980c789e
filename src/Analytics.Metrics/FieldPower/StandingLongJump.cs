using Analytics.Quantities;

namespace Analytics.Metrics.FieldPower;

/// <summary>Standing long (broad) jump: toes at the line to the nearest heel mark.</summary>
public static class StandingLongJump
{
    /// <summary>Distance per stature, no unit: long legs carry a jump further at the same take-off. A description, not a correction; no source.</summary>
    /// <param name="distance">0 m or more.</param>
    /// <param name="stature">Above 0 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside those ranges.</exception>
    public static double PerStature(Length distance, Length stature)
        => Require.NotNegative(distance, "Jump distance") / Require.Positive(stature, "Stature");
}
