using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Analytics.Statistics.Distributions;

/// <summary>The F law of a ratio of two independent mean squares.</summary>
public static class FisherLaw
{
    /// <summary>P(F ≤ x).</summary>
    /// <param name="x">0 or more.</param>
    /// <param name="df1">Degrees of freedom of the numerator, above 0.</param>
    /// <param name="df2">Degrees of freedom of the denominator, above 0.</param>
    public static double Cdf(double x, double df1, double df2)
    {
        var scaled = BetaLaw.Shape(df1, nameof(df1)) * Require.AnyNotNegative(x, nameof(x));
        var share = double.IsFinite(scaled) ? scaled / (scaled + BetaLaw.Shape(df2, nameof(df2))) : 1;
        return SpecialFunctions.BetaRegularized(df1 / 2, BetaLaw.Shape(df2, nameof(df2)) / 2, share);
    }

    /// <summary>P(F > x), the p value of a variance ratio; keeps its digits when small. 0 for an infinite ratio.</summary>
    /// <param name="x">0 or more, infinity allowed.</param>
    /// <param name="df1">Degrees of freedom of the numerator, above 0.</param>
    /// <param name="df2">Degrees of freedom of the denominator, above 0.</param>
    public static double UpperTail(double x, double df1, double df2)
    {
        BetaLaw.Shape(df1, nameof(df1));
        BetaLaw.Shape(df2, nameof(df2));
        if (double.IsPositiveInfinity(x)) return 0;
        return SpecialFunctions.BetaRegularized(df2 / 2, df1 / 2, df2 / (df1 * Require.AnyNotNegative(x, nameof(x)) + df2));
    }

    /// <summary>The x with P(F ≤ x) = p, for example 2.929112 for p = 0.975 and df 9, 18.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    /// <param name="df1">Degrees of freedom of the numerator, above 0.</param>
    /// <param name="df2">Degrees of freedom of the denominator, above 0.</param>
    public static double Quantile(double p, double df1, double df2)
    {
        Require.Share(p, nameof(p));
        return QuantileSearch.Positive(x => Cdf(x, df1, df2), x => FisherSnedecor.PDF(df1, df2, x), p);
    }
}
