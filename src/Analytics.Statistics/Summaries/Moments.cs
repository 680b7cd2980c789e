namespace Analytics.Statistics.Summaries;

/// <summary>Mean, variance and standard deviation that keep their digits.</summary>
/// <remarks>
/// Two passes with corrections: the deviations from the mean are summed, and their own rounding error is taken off.
/// A one-pass sum of squares loses every digit when the mean is large against the spread. Checked against the
/// univariate reference sets of the US National Institute of Standards and Technology [nist-strd].
/// </remarks>
public static class Moments
{
    /// <summary>Arithmetic mean.</summary>
    /// <param name="values">At least one finite value.</param>
    public static double Mean(IReadOnlyList<double> values)
    {
        Require.Sample(values, 1, nameof(values));
        return MeanOf(values);
    }

    /// <summary>Variance with divisor n − 1.</summary>
    /// <param name="values">At least two finite values.</param>
    public static double Variance(IReadOnlyList<double> values)
    {
        Require.Sample(values, 2, nameof(values));
        var mean = MeanOf(values);
        double squares = 0, rest = 0;
        foreach (var value in values)
        {
            var d = value - mean;
            squares += d * d;
            rest += d;
        }

        return (squares - rest * rest / values.Count) / (values.Count - 1);
    }

    /// <summary>Standard deviation with divisor n − 1, in the unit of the values.</summary>
    /// <param name="values">At least two finite values.</param>
    public static double StandardDeviation(IReadOnlyList<double> values) => Math.Sqrt(Math.Max(0, Variance(values)));

    /// <summary>Correlation of each value with the one before it: Σ (yᵢ − m)(yᵢ₋₁ − m) / Σ (yᵢ − m)².</summary>
    /// <param name="values">At least two finite values, not all equal, in the order they were taken.</param>
    /// <exception cref="ArgumentException">All values are equal.</exception>
    public static double LagOneAutocorrelation(IReadOnlyList<double> values)
    {
        Require.Sample(values, 2, nameof(values));
        var mean = MeanOf(values);
        double products = 0, squares = 0;
        for (var i = 0; i < values.Count; i++)
        {
            var d = values[i] - mean;
            squares += d * d;
            if (i > 0) products += d * (values[i - 1] - mean);
        }

        return squares > 0
            ? products / squares
            : throw new ArgumentException($"All {values.Count} values are equal; an autocorrelation needs some spread.", nameof(values));
    }

    private static double MeanOf(IReadOnlyList<double> values)
    {
        double sum = 0;
        foreach (var value in values) sum += value;
        var mean = sum / values.Count;

        double rest = 0;
        foreach (var value in values) rest += value - mean;
        return mean + rest / values.Count;
    }
}
