using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Shrinkage;

/// <summary>The weighted sum of squares of values about their centre as a function of the variance between them.</summary>
internal static class QProfile
{
    /// <summary>The variance at which the sum equals the chi-square quantile of p; 0 when it is below that already without any variance.</summary>
    public static double VarianceAt(IReadOnlyList<double> values, IReadOnlyList<double> errors, double p)
    {
        var target = ChiSquareLaw.Quantile(p, values.Count - 1);
        if (Sum(values, errors, 0) <= target) return 0;
        double low = 0, high = errors.Max(e => e * e);
        while (Sum(values, errors, high) > target) (low, high) = (high, 2 * high);
        // The sum falls steadily with the variance: halving cannot miss.
        for (var i = 0; i < 200 && high - low > 1e-14 * high; i++)
        {
            var middle = (low + high) / 2;
            if (Sum(values, errors, middle) > target) low = middle; else high = middle;
        }

        return (low + high) / 2;
    }

    private static double Sum(IReadOnlyList<double> values, IReadOnlyList<double> errors, double variance)
    {
        double weights = 0, first = 0;
        for (var i = 0; i < values.Count; i++)
        {
            var w = 1 / (variance + errors[i] * errors[i]);
            weights += w;
            first += w * values[i];
        }

        double centre = first / weights, sum = 0;
        for (var i = 0; i < values.Count; i++) sum += Math.Pow(values[i] - centre, 2) / (variance + errors[i] * errors[i]);
        return sum;
    }
}
