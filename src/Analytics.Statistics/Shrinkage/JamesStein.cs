using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Shrinkage;

/// <summary>James–Stein shrinkage of values with one common error toward their mean [efronmorris1975].</summary>
/// <param name="Mean">Mean the values were pulled toward.</param>
/// <param name="Weight">Weight on the own value: 1 − (k − 3) s²/S; the usual positive part never lets it fall below 0.</param>
/// <param name="Values">The shrunken values, in the order given.</param>
public sealed record JamesStein(double Mean, double Weight, IReadOnlyList<double> Values) : Result
{
    /// <summary>Sum of squares S of the values about their mean.</summary>
    public double SumOfSquares { get; private init; }

    /// <summary>Squared standard error of each value.</summary>
    public double ErrorVariance { get; private init; }

    /// <summary>Shrinks toward the mean.</summary>
    /// <param name="values">At least 4 finite values: with fewer the rule does not improve on the values themselves.</param>
    /// <param name="errorVariance">Squared standard error of each value, s², above 0.</param>
    /// <param name="positivePart">
    /// Whether a weight below 0 becomes 0. The plain rule turns values round their mean when they differ less than their errors explain, and is never
    /// the better of the two; it is kept for comparison.
    /// </param>
    public static JamesStein Of(IReadOnlyList<double> values, double errorVariance, bool positivePart = true)
    {
        Require.Sample(values, 4, nameof(values));
        Require.Positive(errorVariance, nameof(errorVariance));
        var mean = Moments.Mean(values);
        var squares = values.Sum(v => (v - mean) * (v - mean));
        // Equal values are their own mean under any weight.
        var weight = squares > 0 ? 1 - (values.Count - 3) * errorVariance / squares : 0;
        if (positivePart) weight = Math.Max(0, weight);
        return new(mean, weight, [.. values.Select(v => mean + weight * (v - mean))]) { SumOfSquares = squares, ErrorVariance = errorVariance };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Shrunken values", "James–Stein toward the mean [efronmorris1975]",
        [
            new("mean", Mean) { StandardError = Math.Sqrt(ErrorVariance / Values.Count) },
            new("weight on the own value", Weight),
            .. Values.Select((v, i) => new ResultLine(FormattableString.Invariant($"value {i + 1}"), v)),
        ])
    {
        Basis = FormattableString.Invariant($"{Values.Count} values of one common error"),
        Remarks = ["Better for the values together; a single one that is truly unlike the rest is pulled too far."],
    };
}
