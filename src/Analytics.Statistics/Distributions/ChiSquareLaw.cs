using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Analytics.Statistics.Distributions;

/// <summary>The chi-square law.</summary>
public static class ChiSquareLaw
{
    // The series behind the law slows down with the root of df and above 1e16 never ends.
    private const double Large = 1e9;

    /// <summary>P(X ≤ x).</summary>
    /// <param name="x">0 or more.</param>
    /// <param name="df">Degrees of freedom, above 0 and finite; above a thousand million by Wilson and Hilferty's cube root.</param>
    public static double Cdf(double x, double df)
    {
        Require.AnyNotNegative(x, nameof(x));
        return Require.AnyPositive(df, nameof(df)) > Large
            ? NormalLaw.Cdf((Math.Cbrt(x / df) - 1 + 2 / (9 * df)) / Math.Sqrt(2 / (9 * df)))
            : SpecialFunctions.GammaLowerRegularized(df / 2, x / 2);
    }

    /// <summary>The x with P(X ≤ x) = p, for example 19.022768 for p = 0.975 and df = 9.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    /// <param name="df">Degrees of freedom, above 0 and finite.</param>
    public static double Quantile(double p, double df)
    {
        Require.Share(p, nameof(p));
        if (Require.AnyPositive(df, nameof(df)) > Large)
            return df * Math.Pow(1 - 2 / (9 * df) + NormalLaw.Quantile(p) * Math.Sqrt(2 / (9 * df)), 3);
        return QuantileSearch.Positive(x => Cdf(x, df), x => ChiSquared.PDF(df, x), p);
    }
}
