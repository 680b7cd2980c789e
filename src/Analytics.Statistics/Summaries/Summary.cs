using Analytics.Statistics.Results;

namespace Analytics.Statistics.Summaries;

/// <summary>What a sample looks like: size, centre, spread and quartiles of type 7, all in the unit of the values.</summary>
/// <param name="N">Number of values.</param>
/// <param name="Mean">Arithmetic mean.</param>
/// <param name="StandardDeviation">Standard deviation, divisor n − 1; null for a single value.</param>
/// <param name="Minimum">Smallest value.</param>
/// <param name="LowerQuartile">Quantile of type 7 at 0.25.</param>
/// <param name="Median">Middle value.</param>
/// <param name="UpperQuartile">Quantile of type 7 at 0.75.</param>
/// <param name="Maximum">Largest value.</param>
public sealed record Summary(
    int N, double Mean, double? StandardDeviation, double Minimum, double LowerQuartile, double Median, double UpperQuartile, double Maximum) : Result
{
    /// <summary>Summarises a sample.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    public static Summary Of(IReadOnlyList<double> values)
    {
        Require.Sample(values, 1, nameof(values));
        return new(
            values.Count,
            Moments.Mean(values),
            values.Count > 1 ? Moments.StandardDeviation(values) : null,
            values.Min(),
            Quantiles.Type7(values, 0.25),
            Quantiles.Median(values),
            Quantiles.Type7(values, 0.75),
            values.Max());
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Summary", "quartiles of type 7 [hyndmanfan1996]",
        [
            new("mean", Mean) { StandardError = StandardDeviation / Math.Sqrt(N) },
            new("SD", StandardDeviation) { Note = N < 2 ? "none: a single value" : string.Empty, DegreesOfFreedom = N > 1 ? N - 1 : null },
            new("minimum", Minimum), new("lower quartile", LowerQuartile), new("median", Median), new("upper quartile", UpperQuartile), new("maximum", Maximum),
        ])
    { Basis = $"{N} values" };
}
