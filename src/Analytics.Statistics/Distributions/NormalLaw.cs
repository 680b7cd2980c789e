using MathNet.Numerics.Distributions;

namespace Analytics.Statistics.Distributions;

/// <summary>The standard normal law.</summary>
public static class NormalLaw
{
    /// <summary>P(Z ≤ z).</summary>
    /// <param name="z">Any number.</param>
    public static double Cdf(double z) => Normal.CDF(0, 1, Require.Number(z, nameof(z)));

    /// <summary>The z with P(Z ≤ z) = p.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    public static double Quantile(double p) => Normal.InvCDF(0, 1, Require.Share(p, nameof(p)));

    /// <summary>The z that leaves (1 − level)/2 on either side: 1.959964 for 0.95.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static double TwoSided(double level) => Quantile((1 + Require.Share(level, nameof(level))) / 2);
}
