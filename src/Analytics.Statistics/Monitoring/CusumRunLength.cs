using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Analytics.Statistics.Monitoring;

/// <summary>Mean run length of a CUSUM chart by the integral equation of the run length [page1954; brookevans1972], in units of SD.</summary>
/// <remarks>
/// One side: L(u) = 1 + L(0) Φ(k − u − δ) + ∫₀ʰ L(z) φ(z + k − u − δ) dz. Both sides, started at 0: 1/L = 1/L⁺ + 1/L⁻.
/// Values normal and independent, target and SD known.
/// </remarks>
public static class CusumRunLength
{
    /// <summary>Mean number of points up to and including the first signal of either side.</summary>
    /// <param name="k">Allowance in standard deviations, 0 or more.</param>
    /// <param name="h">Decision limit in standard deviations, above 0, at most 30.</param>
    /// <param name="shift">Lasting change from the first point on, in standard deviations.</param>
    public static double TwoSided(double k, double h, double shift = 0) => 1 / (1 / OneSided(k, h, shift) + 1 / OneSided(k, h, -shift));

    /// <summary>The same for the upper side alone.</summary>
    /// <param name="k">Allowance in standard deviations, 0 or more.</param>
    /// <param name="h">Decision limit in standard deviations, above 0, at most 30.</param>
    /// <param name="shift">Lasting change, in standard deviations, up when positive.</param>
    public static double OneSided(double k, double h, double shift = 0)
    {
        Require.AnyNotNegative(k, nameof(k));
        Require.Finite(shift, nameof(shift));
        Decision(h);
        var rule = EwmaRunLength.Nodes(0, h, h / 2);
        var n = rule.Order;
        // The last unknown is L(0): a sum that is back at 0 starts anew.
        double From(int i) => i < n ? rule.GetAbscissa(i) : 0;
        var system = Matrix<double>.Build.Dense(n + 1, n + 1, (i, j) => (i == j ? 1 : 0) - (j < n
            ? rule.GetWeight(j) * Normal.PDF(0, 1, rule.GetAbscissa(j) + k - From(i) - shift)
            : Normal.CDF(0, 1, k - From(i) - shift)));
        return system.Solve(Vector<double>.Build.Dense(n + 1, 1))[n];
    }

    internal static void Decision(double h)
    {
        if (!(h > 0 && h <= 30))
            throw new ArgumentOutOfRangeException(nameof(h), h, FormattableString.Invariant($"The decision limit is {h} standard deviations; allowed: above 0, at most 30."));
    }
}
