using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Shrinkage;

/// <summary>James–Stein shrinkage of values with one common error toward their mean [efronmorris1975].</summary>
/// <param name="Mean">Mean the values were pulled toward.</param>
/// <param name="Weight">Weight on the own value: 1 − (k − 3) s²/S, never below 0.</param>
/// <param name="Values">The shrunken values, in the order given.</param>
public sealed record JamesStein(double Mean, double Weight, IReadOnlyList<double> Values)
{
    /// <summary>Shrinks toward the mean.</summary>
    /// <param name="values">At least 4 finite values: with fewer the rule does not improve on the values themselves.</param>
    /// <param name="errorVariance">Squared standard error of each value, s², above 0.</param>
    public static JamesStein Of(IReadOnlyList<double> values, double errorVariance)
    {
        Require.Sample(values, 4, nameof(values));
        Require.Positive(errorVariance, nameof(errorVariance));
        var mean = Moments.Mean(values);
        var squares = values.Sum(v => (v - mean) * (v - mean));
        var weight = squares > 0 ? Math.Max(0, 1 - (values.Count - 3) * errorVariance / squares) : 0;
        return new(mean, weight, [.. values.Select(v => mean + weight * (v - mean))]);
    }
}
