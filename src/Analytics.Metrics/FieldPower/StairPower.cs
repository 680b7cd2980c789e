using Analytics.Quantities;

namespace Analytics.Metrics.FieldPower;

/// <summary>
/// Mean power of carrying the body up a stair at a run.
/// </summary>
/// <remarks>
/// <para>P = m·g·D/t; m body mass (kg), D vertical rise between the timed steps (m), t time between them (s).</para>
/// <para>D is measured on the stairs used: steps of 17.4, 17.5 and 17.8 cm are all in print, so no rise is built in. The work of moving the legs and of gaining speed is not counted. [kalamen1968, margaria1966]</para>
/// <para>Power grows with body mass alone; look at W/kg beside it before comparing a lineman with a back.</para>
/// </remarks>
public static class StairPower
{
    /// <summary>Mean power up the stair.</summary>
    /// <param name="bodyMass">Above 0 kg.</param>
    /// <param name="rise">Vertical rise between the timed steps, above 0 m.</param>
    /// <param name="time">Time between them, above 0 s.</param>
    /// <param name="g">Acceleration of free fall; <see cref="Gravity.Published"/> when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside those ranges.</exception>
    public static Power Mean(Mass bodyMass, Length rise, Duration time, Acceleration? g = null)
        => Require.Positive(bodyMass, "Body mass") * Require.Positive(g ?? Gravity.Published, "Gravity", nameof(g))
            * Require.Positive(rise, "Rise") / Require.Positive(time, "Time");
}
