using Analytics.Statistics.Distributions;

namespace Analytics.Metrics.Contact;

/// <summary>
/// Sum of a uniform error (an event somewhere in one frame interval) and a normal one. Where the frame dominates, its 95 % reach is well below 1.96 standard errors: a uniform error alone never goes beyond 1.73.
/// </summary>
internal static class FrameAndNormal
{
    /// <summary>Reach of a central interval.</summary>
    /// <param name="halfWidth">a: the uniform error lies within ±a.</param>
    /// <param name="sd">σ of the normal error.</param>
    /// <param name="coverage">Between 0 and 1.</param>
    public static double Reach(double halfWidth, double sd, double coverage)
    {
        if (halfWidth <= 1e-9 * sd) return NormalLaw.TwoSided(coverage) * sd;
        if (sd <= 1e-9 * halfWidth) return coverage * halfWidth;
        // The share inside grows with the reach, so halving finds it.
        var (low, high) = (0.0, halfWidth + (NormalLaw.TwoSided(coverage) * sd));
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (Inside(middle) < coverage) low = middle;
            else high = middle;
        }
        return (low + high) / 2;

        // P(|U + N| ≤ x) = [G(x + a) − G(x − a) − G(a − x) + G(−x − a)]/(2a), G the integral of the normal law.
        double Inside(double x) => (G(x + halfWidth) - G(x - halfWidth) - G(halfWidth - x) + G(-x - halfWidth)) / (2 * halfWidth);
        double G(double x) => (x * NormalLaw.Cdf(x / sd)) + (sd * Math.Exp(-x * x / (2 * sd * sd)) / Math.Sqrt(2 * Math.PI));
    }
}
