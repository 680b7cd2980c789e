using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.EffectSize;

/// <summary>Other faces of a standardised difference between two normal groups of equal spread.</summary>
public static class Overlap
{
    /// <summary>Common-language effect Φ(d/√2): chance that one drawn from the first group exceeds one drawn from the second [mcgrawwong1992].</summary>
    /// <param name="d">Standardised difference, finite.</param>
    public static double ChanceOfExceeding(double d) => NormalLaw.Cdf(Require.Finite(d, nameof(d)) / Math.Sqrt(2));

    /// <summary>Correlation between group and score for two groups of equal size, d/√(d² + 4).</summary>
    /// <param name="d">Standardised difference, finite.</param>
    public static double Correlation(double d) => Require.Finite(d, nameof(d)) / Math.Sqrt(d * d + 4);
}
