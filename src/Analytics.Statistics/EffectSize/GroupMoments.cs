using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.EffectSize;

/// <summary>A group known by its size, mean and standard deviation.</summary>
/// <param name="N">Values, at least 2.</param>
/// <param name="Mean">Mean, in the unit of the values.</param>
/// <param name="StandardDeviation">Standard deviation with divisor n − 1, 0 or more, in the unit of the values.</param>
public sealed record GroupMoments(int N, double Mean, double StandardDeviation)
{
    /// <summary>Values, at least 2.</summary>
    public int N { get; } = Require.AtLeast(N, 2, nameof(N));

    /// <summary>Mean, in the unit of the values.</summary>
    public double Mean { get; } = Require.Finite(Mean, nameof(Mean));

    /// <summary>Standard deviation with divisor n − 1, in the unit of the values.</summary>
    public double StandardDeviation { get; } = Require.NotNegative(StandardDeviation, nameof(StandardDeviation));

    /// <summary>The moments of a sample.</summary>
    /// <param name="values">At least 2 finite values.</param>
    public static GroupMoments Of(IReadOnlyList<double> values)
    {
        Require.Sample(values, 2, nameof(values));
        return new(values.Count, Moments.Mean(values), Moments.StandardDeviation(values));
    }

    internal double Variance => StandardDeviation * StandardDeviation;

    internal double ErrorVariance => Variance / N;
}
