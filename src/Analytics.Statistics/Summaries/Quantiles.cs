namespace Analytics.Statistics.Summaries;

/// <summary>Sample quantiles of one named definition: type 7 of Hyndman and Fan [hyndmanfan1996].</summary>
/// <remarks>
/// Type 7 interpolates at position (n − 1) p + 1 of the sorted values. R, NumPy and the inclusive percentile of
/// spreadsheets do the same by default; some statistics packages use type 6 and give wider quartiles.
/// </remarks>
public static class Quantiles
{
    /// <summary>Factor that makes the median absolute deviation estimate a normal standard deviation: 1/Φ⁻¹(0.75).</summary>
    public const double NormalConsistency = 1.4826022185056018;

    /// <summary>Quantile of type 7, in the unit of the values.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    /// <param name="p">Share of the values below, 0 to 1.</param>
    public static double Type7(IReadOnlyList<double> values, double p)
    {
        Require.Sample(values, 1, nameof(values));
        if (!(p >= 0 && p <= 1)) throw new ArgumentOutOfRangeException(nameof(p), p, FormattableString.Invariant($"p is {p}; allowed: 0 to 1."));

        var sorted = values.Order().ToArray();
        var position = (sorted.Length - 1) * p;
        var below = (int)Math.Floor(position);
        var above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + (position - below) * (sorted[above] - sorted[below]);
    }

    /// <summary>The middle value; the mean of the two middle ones when n is even.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    public static double Median(IReadOnlyList<double> values) => Type7(values, 0.5);

    /// <summary>Median of the absolute distances from the median, not rescaled; times <see cref="NormalConsistency"/> it estimates an SD.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    public static double MedianAbsoluteDeviation(IReadOnlyList<double> values)
    {
        var median = Median(values);
        return Median([.. values.Select(v => Math.Abs(v - median))]);
    }
}
