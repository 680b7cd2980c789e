using Analytics.Statistics.Results;

namespace Analytics.Statistics.Summaries;

/// <summary>Tukey's five numbers [tukey1977]: the hinges are the medians of the two halves, the middle value counted in both when n is odd.</summary>
/// <param name="N">Number of values.</param>
/// <param name="Minimum">Smallest value.</param>
/// <param name="LowerHinge">Median of the lower half.</param>
/// <param name="Median">Middle value.</param>
/// <param name="UpperHinge">Median of the upper half.</param>
/// <param name="Maximum">Largest value.</param>
public sealed record TukeyHinges(int N, double Minimum, double LowerHinge, double Median, double UpperHinge, double Maximum) : Result
{
    /// <summary>Five numbers of a sample, in its unit.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    public static TukeyHinges Of(IReadOnlyList<double> values)
    {
        Require.Sample(values, 1, nameof(values));
        double[] sorted = [.. values.Order()];
        var half = (sorted.Length + 1) / 2;
        return new(
            sorted.Length,
            sorted[0],
            Quantiles.Median(sorted[..half]),
            Quantiles.Median(sorted),
            Quantiles.Median(sorted[^half..]),
            sorted[^1]);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Five numbers", "Tukey's hinges: medians of the two halves [tukey1977]",
        [new("minimum", Minimum), new("lower hinge", LowerHinge), new("median", Median), new("upper hinge", UpperHinge), new("maximum", Maximum)])
    { Basis = $"{N} values" };
}
