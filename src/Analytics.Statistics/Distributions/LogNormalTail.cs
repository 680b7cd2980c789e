namespace Analytics.Statistics.Distributions;

/// <summary>Logarithm of the normal distribution function and its slope, without underflow however far the tail.</summary>
internal static class LogNormalTail
{
    private const double HalfLogTwoPi = 0.91893853320467274;

    // Beyond this the asymptotic series holds all digits of a double.
    private const double Far = -30;

    /// <summary>ln P(Z ≤ z).</summary>
    public static double LogCdf(double z)
    {
        if (z >= Far) return Math.Log(NormalLaw.Cdf(z));
        var q = 1 / (z * z);
        return -z * z / 2 - HalfLogTwoPi - Math.Log(-z) + Math.Log(1 - q * (1 - q * (3 - q * (15 - 105 * q))));
    }

    /// <summary>ln of the normal density.</summary>
    public static double LogDensity(double z) => -z * z / 2 - HalfLogTwoPi;

    /// <summary>Density over distribution function: the slope of <see cref="LogCdf"/>.</summary>
    public static double Slope(double z) => Math.Exp(LogDensity(z) - LogCdf(z));
}
