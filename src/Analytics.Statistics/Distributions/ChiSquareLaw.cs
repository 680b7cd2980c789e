using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Analytics.Statistics.Distributions;

/// <summary>The chi-square law.</summary>
public static class ChiSquareLaw
{
    /// <summary>P(X ≤ x).</summary>
    /// <param name="x">0 or more.</param>
    /// <param name="df">Degrees of freedom, above 0 and finite.</param>
    public static double Cdf(double x, double df)
        => SpecialFunctions.GammaLowerRegularized(Require.Positive(df, nameof(df)) / 2, Require.NotNegative(x, nameof(x)) / 2);

    /// <summary>The x with P(X ≤ x) = p, for example 19.022768 for p = 0.975 and df = 9.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    /// <param name="df">Degrees of freedom, above 0 and finite.</param>
    public static double Quantile(double p, double df)
    {
        Require.Share(p, nameof(p));
        return QuantileSearch.Positive(x => Cdf(x, df), x => ChiSquared.PDF(df, x), p);
    }
}
