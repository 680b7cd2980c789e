using Analytics.Statistics.Association;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Trends;

/// <summary>
/// A straight trend by repeated medians: for each point the median slope to all others, then the median of those. Holds with nearly half of
/// the points wild, where the plain median of slopes holds with 29 % [siegel1982].
/// </summary>
/// <param name="Slope">Units of y per unit of x.</param>
/// <param name="Intercept">Median of y − slope x.</param>
/// <param name="N">Points.</param>
public sealed record RepeatedMedians(double Slope, double Intercept, int N) : Result
{
    /// <summary>The trend of y over x. Points of equal x have no slope between them.</summary>
    /// <param name="x">Times or other positions, at least two different ones.</param>
    /// <param name="y">The value at each.</param>
    public static RepeatedMedians Of(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        Paired.Require(x, y, 2);
        Paired.Varies(x, nameof(x), "a slope");
        double[] each =
        [
            .. Enumerable.Range(0, x.Count).Select(i => Quantiles.Median(
                [.. Enumerable.Range(0, x.Count).Where(j => !x[j].Equals(x[i])).Select(j => (y[j] - y[i]) / (x[j] - x[i]))])),
        ];
        var slope = Quantiles.Median(each);
        return new(slope, Quantiles.Median([.. x.Zip(y, (a, b) => b - slope * a)]), x.Count);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Trend by repeated medians", "repeated medians [siegel1982]",
        [new("slope", Slope), new("intercept", Intercept)])
    {
        Basis = FormattableString.Invariant($"{N} points"),
        Remarks = ["No interval: none is published for this slope; resample it, or use the median of all slopes."],
    };
}
