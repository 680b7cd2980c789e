using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Integration;

namespace Analytics.Statistics.Monitoring;

/// <summary>Mean run length of a two-sided EWMA chart with asymptotic limits, by the integral equation of the run length [crowder1987].</summary>
/// <remarks>
/// L(u) = 1 + (1/λ) ∫ L(z) φ((z − (1 − λ) u)/λ − δ) dz over the limits, in units of SD, solved on Gauss–Legendre nodes; the first value starts at the target.
/// Values normal and independent, target and SD known.
/// </remarks>
public static class EwmaRunLength
{
    private const double SmallestWeight = 0.01;

    /// <summary>Mean number of points up to and including the first signal.</summary>
    /// <param name="lambda">Weight of the newest value, 0.01 to 1.</param>
    /// <param name="width">Width of the limits in standard deviations of the average, above 0, at most 6.</param>
    /// <param name="shift">Lasting change from the first point on, in standard deviations of single values.</param>
    public static double Of(double lambda, double width, double shift = 0)
    {
        Weight(lambda);
        Require.Finite(shift, nameof(shift));
        Width(width);
        // Without memory every point stands alone.
        if (lambda == 1) return 1 / (Normal.CDF(0, 1, shift - width) + Normal.CDF(0, 1, -shift - width));
        var limit = width * Math.Sqrt(lambda / (2 - lambda));
        var rule = Nodes(-limit, limit, limit / lambda);
        double Kernel(double from, double to) => Normal.PDF(0, 1, (to - (1 - lambda) * from) / lambda - shift) / lambda;
        var system = Matrix<double>.Build.Dense(rule.Order, rule.Order, (i, j) =>
            (i == j ? 1 : 0) - rule.GetWeight(j) * Kernel(rule.GetAbscissa(i), rule.GetAbscissa(j)));
        var lengths = system.Solve(Vector<double>.Build.Dense(rule.Order, 1));
        double start = 1;
        for (var j = 0; j < rule.Order; j++) start += rule.GetWeight(j) * lengths[j] * Kernel(0, rule.GetAbscissa(j));
        return start;
    }

    // Nodes enough for a bell that many times narrower than half the range; of numbers the library holds to full precision (others come to 10 digits).
    internal static GaussLegendreRule Nodes(double low, double high, double bells)
        => new(low, high, bells switch { < 3 => 64, < 8 => 128, < 20 => 256, _ => 512 });

    internal static double Width(double width)
        => width is > 0 and <= 6
            ? width
            : throw new ArgumentOutOfRangeException(nameof(width), width, FormattableString.Invariant($"width is {width} standard deviations; allowed: above 0, at most 6."));

    internal static double Weight(double lambda)
        => lambda is >= SmallestWeight and <= 1
            ? lambda
            : throw new ArgumentOutOfRangeException(nameof(lambda), lambda, FormattableString.Invariant($"lambda is {lambda}; allowed: {SmallestWeight} to 1."));
}
