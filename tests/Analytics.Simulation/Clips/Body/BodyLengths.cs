namespace Analytics.Simulation.Clips.Body;

/// <summary>
/// Segment lengths of a man of a given stature: shares of stature of de Leva's mean man (1741 mm) [deleva1996]; thigh, shank and foot were compared with a public copy of the table, the others
/// are from memory. Heights of the ankle over the sole and its place along the foot are common practice, no source. No player is built like the mean; lengths here only have to be fixed and known.
/// </summary>
/// <param name="StatureMetres">Stature.</param>
public sealed record BodyLengths(double StatureMetres)
{
    private const double MeanStature = 1741;

    /// <summary>Vertex to C7.</summary>
    public double Head => Share(242.9);

    /// <summary>C7 to the middle of the hips.</summary>
    public double NeckToHip => Share(603.3);

    /// <summary>Middle of the shoulders to the middle of the hips, on the same line.</summary>
    public double ShoulderToHip => Share(515.5);

    public double UpperArm => Share(281.7);

    public double Forearm => Share(268.9);

    /// <summary>Wrist to the third knuckle.</summary>
    public double Hand => Share(86.2);

    public double Thigh => Share(422.2);

    public double Shank => Share(434.0);

    /// <summary>Heel to the tip of the toe.</summary>
    public double Foot => Share(258.1);

    /// <summary>Ankle over the line from heel to toe.</summary>
    public double AnkleHeight => 0.039 * StatureMetres;

    /// <summary>Ankle from the heel, along the foot.</summary>
    public double AnkleFromHeel => 0.25 * Foot;

    private double Share(double millimetres) => millimetres / MeanStature * StatureMetres;
}
