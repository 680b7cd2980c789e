namespace Analytics.Simulation.Clips.Motion;

/// <summary>
/// Swing of the limbs as functions of one phase φ, 0 in the set position and 2π a stride later; the far side is half a stride behind. Made up to look like the first two steps out of a three-point
/// start (front thigh forward and shin leaning, then drive and recovery): smooth, of plausible size, fitted to nobody. Feet are not pinned to the ground. Angles in degrees from upright, forward positive.
/// </summary>
public sealed record Gait
{
    /// <summary>Full strides a second once the limbs are under way; two steps each.</summary>
    public double StridesPerSecond { get; init; } = 2.0;

    /// <summary>Time in which the limbs get going.</summary>
    public double OnsetSeconds { get; init; } = 0.08;

    /// <summary>Half the swing of the thigh.</summary>
    public double ThighSwing { get; init; } = 32;

    /// <summary>How much earlier than the thigh the knee bends and straightens, in rad of phase.</summary>
    public double KneeLead { get; init; } = 0.5;

    public double Phase(double t) => 2 * Math.PI * StridesPerSecond * Curves.Onset(t, OnsetSeconds);

    public double Thigh(double phase) => -18 - (ThighSwing * Math.Cos(phase));

    /// <summary>Bend of the knee; the shin leans by the thigh's lean and this.</summary>
    public double Knee(double phase) => 62 + (38 * Math.Cos(phase + KneeLead));

    public double Shank(double phase) => Thigh(phase) + Knee(phase);

    /// <summary>Heel over toe: the foot points down by this.</summary>
    public static double FootDown(double phase) => 15 + (12.5 * (1 - Math.Cos(phase)));

    /// <summary>The arm goes against the leg of its side.</summary>
    public static double UpperArm(double phase) => 10 + (45 * Math.Cos(phase));

    public static double Forearm(double phase) => UpperArm(phase) - 90 - (15 * Math.Cos(phase));

    public static double Hand(double phase) => Forearm(phase) - 10;
}
