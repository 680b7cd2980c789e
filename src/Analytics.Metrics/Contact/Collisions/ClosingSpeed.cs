using Analytics.Quantities;

namespace Analytics.Metrics.Contact;

/// <summary>How fast two players approach each other.</summary>
public static class ClosingSpeed
{
    /// <summary>√(u₁² + u₂² − 2·u₁·u₂·cos A) for headings that differ by A; 180° is head-on.</summary>
    /// <param name="first">u₁, 0 or more.</param>
    /// <param name="second">u₂, 0 or more.</param>
    /// <param name="between">A.</param>
    /// <exception cref="ArgumentOutOfRangeException">A speed below 0.</exception>
    public static Speed Of(Speed first, Speed second, Angle between)
    {
        double u = Require.NotNegative(first, "speed").MetresPerSecond, w = Require.NotNegative(second, "speed").MetresPerSecond;
        // (u − w)² + 4uw·sin²(A/2): the same without cancelling for like speeds and small angles.
        return Speed.FromMetresPerSecond(double.Hypot(u - w, 2 * Math.Sqrt(u * w) * Math.Sin(between.Radians / 2)));
    }
}
