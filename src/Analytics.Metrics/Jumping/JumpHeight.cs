using Analytics.Quantities;

namespace Analytics.Metrics.Jumping;

/// <summary>
/// Rise of the body's centre of mass between take-off and its highest point.
/// </summary>
/// <remarks>
/// <para>From flight time t: h = g·t²/8. It assumes the same posture at take-off and landing; tucked legs at landing lengthen t and flatter the jump.</para>
/// <para>From take-off speed v: h = v²/(2g). The speed comes from a force plate; no posture is assumed.</para>
/// <para>The two are different scales: flight time gave 1.7 cm more than impulse in [baumgart2017]. Neither counts the rise on to the toes before take-off.</para>
/// <para>Sources: [linthorne2001]. g is <see cref="Gravity.Published"/> unless another is given.</para>
/// </remarks>
public static class JumpHeight
{
    /// <summary>Height from the time in the air: g·t²/8.</summary>
    /// <param name="flightTime">Above 0 s.</param>
    /// <param name="g">Acceleration of free fall; <see cref="Gravity.Published"/> when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">Flight time of 0 s or less.</exception>
    public static Length FromFlightTime(Duration flightTime, Acceleration? g = null)
    {
        var t = Require.Positive(flightTime, "Flight time").Seconds;
        return Length.FromMetres(Fall(g) * t * t / 8);
    }

    /// <summary>Height from the vertical speed at take-off: v²/(2g).</summary>
    /// <param name="takeOffSpeed">0 m/s or more.</param>
    /// <param name="g">Acceleration of free fall; <see cref="Gravity.Published"/> when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative speed.</exception>
    public static Length FromTakeOffSpeed(Speed takeOffSpeed, Acceleration? g = null)
    {
        var v = Require.NotNegative(takeOffSpeed, "Take-off speed").MetresPerSecond;
        return Length.FromMetres(v * v / (2 * Fall(g)));
    }

    /// <summary>Time in the air of a jump of this height: √(8h/g).</summary>
    /// <param name="height">0 m or more.</param>
    /// <param name="g">Acceleration of free fall; <see cref="Gravity.Published"/> when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative height.</exception>
    public static Duration ToFlightTime(Length height, Acceleration? g = null)
        => Duration.FromSeconds(Math.Sqrt(8 * Require.NotNegative(height, "Jump height").Metres / Fall(g)));

    /// <summary>Vertical take-off speed of a jump of this height: √(2gh).</summary>
    /// <param name="height">0 m or more.</param>
    /// <param name="g">Acceleration of free fall; <see cref="Gravity.Published"/> when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative height.</exception>
    public static Speed ToTakeOffSpeed(Length height, Acceleration? g = null)
        => Speed.FromMetresPerSecond(Math.Sqrt(2 * Fall(g) * Require.NotNegative(height, "Jump height").Metres));

    private static double Fall(Acceleration? g) => Require.Positive(g ?? Gravity.Published, "Gravity", nameof(g)).MetresPerSecondSquared;
}
