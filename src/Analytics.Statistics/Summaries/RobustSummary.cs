using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Summaries;

/// <summary>Which distances made a robust spread.</summary>
public enum SpreadSource
{
    /// <summary>Median absolute deviation × 1.482602.</summary>
    MedianAbsoluteDeviation,

    /// <summary>Mean absolute deviation × 1.253314, because more than half of the values are equal and the median deviation is 0.</summary>
    MeanAbsoluteDeviation,

    /// <summary>None: all values are equal.</summary>
    None,
}

/// <summary>Centre and spread that a few wild values cannot move [hampel1974; iglewiczhoaglin1993].</summary>
/// <param name="N">Number of values.</param>
/// <param name="Median">Middle value.</param>
/// <param name="Spread">Estimate of the standard deviation of normal values; null when all values are equal.</param>
/// <param name="Source">Which distances made the spread.</param>
/// <param name="MedianInterval">Interval of the median by order statistics, right for any continuous law; its level is the one reached, at least the one asked for. Null when there are too few values for it.</param>
public sealed record RobustSummary(int N, double Median, double? Spread, SpreadSource Source, Interval? MedianInterval) : Result
{
    /// <summary>Summarises a sample.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    /// <param name="level">Least coverage of the interval of the median, above 0 and below 1.</param>
    public static RobustSummary Of(IReadOnlyList<double> values, double level = 0.95)
    {
        Require.Share(level, nameof(level));
        var median = Quantiles.Median(values);
        var interval = OrderInterval([.. values.Order()], level);
        var mad = Quantiles.MedianAbsoluteDeviation(values) * Quantiles.NormalConsistency;
        if (mad > 0) return new(values.Count, median, mad, SpreadSource.MedianAbsoluteDeviation, interval);
        var mean = Quantiles.MeanAbsoluteDeviation(values) * Quantiles.NormalConsistencyOfMean;
        return mean > 0
            ? new(values.Count, median, mean, SpreadSource.MeanAbsoluteDeviation, interval)
            : new(values.Count, median, null, SpreadSource.None, interval);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Robust summary", "median and scaled absolute deviation from it [hampel1974]",
        [
            new("median", Median) { Interval = MedianInterval, Note = MedianInterval is null ? "too few values for an interval" : string.Empty },
            new("spread (as an SD)", Spread)
            {
                Note = Source switch
                {
                    SpreadSource.MeanAbsoluteDeviation => "from the mean absolute deviation: more than half of the values are equal",
                    SpreadSource.None => "none: all values are equal",
                    _ => string.Empty,
                },
            },
        ])
    { Basis = $"{N} values" };

    // The true median lies between the r-th value from below and from above unless fewer than r of n coins show heads or tails.
    private static Interval? OrderInterval(double[] sorted, double level)
    {
        var n = sorted.Length;
        Interval? best = null;
        for (var r = 1; r <= n / 2; r++)
        {
            var reached = 1 - 2 * BinomialLaw.Cdf(r - 1, n, 0.5);
            if (reached < level) break;
            best = new(sorted[r - 1], sorted[n - r], reached);
        }

        return best;
    }
}
