using MathNet.Numerics;

namespace Analytics.Statistics.Distributions;

/// <summary>The gamma law.</summary>
public static class GammaLaw
{
    /// <summary>P(X ≤ x).</summary>
    /// <param name="x">0 or more.</param>
    /// <param name="shape">Above 0 and finite.</param>
    /// <param name="rate">Above 0 and finite; the mean is shape/rate.</param>
    public static double Cdf(double x, double shape, double rate = 1)
        => ChiSquareLaw.Cdf(Math.Min(double.MaxValue, 2 * Require.AnyNotNegative(x, nameof(x)) * Require.AnyPositive(rate, nameof(rate))), 2 * Require.AnyPositive(shape, nameof(shape)));

    /// <summary>ln Γ(x).</summary>
    /// <param name="x">Above 0 and finite.</param>
    public static double LogGamma(double x)
        // 1 and 2 are exact zeros, which rounding would miss.
        => x is 1 or 2 ? 0 : SpecialFunctions.GammaLn(Require.AnyPositive(x, nameof(x)));
}
