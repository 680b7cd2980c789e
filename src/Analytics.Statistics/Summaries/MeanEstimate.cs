using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Summaries;

/// <summary>A mean with Student's t interval.</summary>
public static class MeanEstimate
{
    /// <summary>Mean ± t(n − 1) SD/√n. Without a second value there is no error to state, and none is stated.</summary>
    /// <param name="values">At least one finite value; independent of each other.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public static Estimate Of(IReadOnlyList<double> values, double level = 0.95)
    {
        var mean = Moments.Mean(values);
        if (values.Count < 2) return new(mean, null, null, values.Count, "single value, no error known");
        var error = Moments.StandardDeviation(values) / Math.Sqrt(values.Count);
        var reach = StudentLaw.TwoSided(level, values.Count - 1) * error;
        return new(mean, error, new Interval(mean - reach, mean + reach, level), values.Count, "mean with Student t interval");
    }
}
