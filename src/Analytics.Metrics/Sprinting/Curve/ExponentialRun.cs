using Analytics.Statistics.Special;

namespace Analytics.Metrics.Sprinting.Curve;

/// <summary>
/// The exponential approach to top speed in plain doubles (m, s, m/s), written so that no digits are lost at small times or distances.
/// Reduced variables: u = t/T, d = x/(V T), q = v/V = 1 - exp(-u); then d = u - q.
/// </summary>
internal static class ExponentialRun
{
    /// <summary>q = 1 - exp(-u).</summary>
    public static double SpeedShare(double u) => u < 0.5 ? u - Lag(u) : 1 - Math.Exp(-u);

    /// <summary>d = u - 1 + exp(-u): distance in units of V·T.</summary>
    public static double Lag(double u)
    {
        if (Math.Abs(u) >= 0.5) return u - 1 + Math.Exp(-u);
        // u²/2 - u³/3! + u⁴/4! - ...; 14 terms reach 1e-17 at 0.5.
        var sum = 1.0;
        for (var k = 16; k >= 3; k--) sum = 1 - (u / k * sum);
        return 0.5 * u * u * sum;
    }

    /// <summary>d(V·T·d)/dT at fixed t, divided by V: u·exp(-u) - (1 - exp(-u)) = d - u·q.</summary>
    public static double LagSlope(double u) => Lag(u) - (u * SpeedShare(u));

    /// <summary>q at reduced distance d; the time there is T·(d + q).</summary>
    public static double SpeedShareAtDistance(double d) => LambertW.OnePlusPrincipal(d);
}
