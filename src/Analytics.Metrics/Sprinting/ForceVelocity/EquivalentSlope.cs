using Analytics.Quantities;

namespace Analytics.Metrics.Sprinting.ForceVelocity;

/// <summary>The slope on which running at a steady speed would ask for the same lean as accelerating on the flat: tan of the angle is a/g. Source: [diprampero2005].</summary>
public static class EquivalentSlope
{
    /// <summary>a/g: rise over run.</summary>
    /// <param name="acceleration">Forward acceleration, 0 or more.</param>
    /// <param name="gravity">g; <see cref="Gravity.Published"/> when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public static double Gradient(Acceleration acceleration, Acceleration? gravity = null)
        => Require.NotNegative(acceleration, "acceleration").Si / (gravity ?? Gravity.Published).Si;

    /// <summary>The angle of that slope.</summary>
    /// <param name="acceleration">Forward acceleration, 0 or more.</param>
    /// <param name="gravity">g; <see cref="Gravity.Published"/> when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public static Angle Of(Acceleration acceleration, Acceleration? gravity = null) => Angle.FromRadians(Math.Atan(Gradient(acceleration, gravity)));
}
