using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Analytics.Statistics.Distributions;

/// <summary>The beta law on 0 to 1.</summary>
public static class BetaLaw
{
    // The continued fraction behind the law loses digits as shapes grow, and all of them soon after this.
    internal const double LargestShape = 1e10;

    /// <summary>P(X ≤ x).</summary>
    /// <param name="x">0 to 1.</param>
    /// <param name="a">First shape, above 0 and at most ten thousand million.</param>
    /// <param name="b">Second shape, above 0 and at most ten thousand million.</param>
    public static double Cdf(double x, double a, double b)
        => SpecialFunctions.BetaRegularized(Shape(a, nameof(a)), Shape(b, nameof(b)), Require.Within(x, 0, 1, nameof(x)));

    internal static double Shape(double value, string name) => Require.Within(Require.AnyPositive(value, name), 0, LargestShape, name);

    /// <summary>The x with P(X ≤ x) = p.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    /// <param name="a">First shape, above 0 and at most ten thousand million.</param>
    /// <param name="b">Second shape, above 0 and at most ten thousand million.</param>
    public static double Quantile(double p, double a, double b)
    {
        Require.Share(p, nameof(p));
        // Searched as the odds x/(1 − x), which fill the positive axis.
        var odds = QuantileSearch.Positive(
            o => Cdf(o / (1 + o), a, b), o => Beta.PDF(a, b, o / (1 + o)) / ((1 + o) * (1 + o)), p);
        return odds / (1 + odds);
    }
}
