using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Change;

/// <summary>What to believe about an athlete's true change once a stated prior is combined with the test (normal with normal).</summary>
/// <param name="Mean">Posterior mean, in the unit of the test.</param>
/// <param name="StandardDeviation">Posterior standard deviation.</param>
public sealed record ChangePosterior(double Mean, double StandardDeviation)
{
    /// <summary>Combines a prior N(mean, SD²) of the true change with an observed change of known error.</summary>
    /// <param name="difference">Observed change.</param>
    /// <param name="standardError">Its standard error, above 0.</param>
    /// <param name="priorMean">Change expected before the test.</param>
    /// <param name="priorSd">SD of true changes expected before the test, above 0.</param>
    public static ChangePosterior Of(double difference, double standardError, double priorMean, double priorSd)
    {
        var data = 1 / Math.Pow(Require.Positive(standardError, nameof(standardError)), 2);
        var prior = 1 / Math.Pow(Require.Positive(priorSd, nameof(priorSd)), 2);
        var mean = (Require.Finite(difference, nameof(difference)) * data + Require.Finite(priorMean, nameof(priorMean)) * prior) / (data + prior);
        return new(mean, Math.Sqrt(1 / (data + prior)));
    }

    /// <summary>P(true change &gt; threshold).</summary>
    /// <param name="threshold">In the unit of the test.</param>
    public double Above(double threshold) => NormalLaw.Cdf((Mean - threshold) / StandardDeviation);

    /// <summary>P(true change &lt; threshold).</summary>
    /// <param name="threshold">In the unit of the test.</param>
    public double Below(double threshold) => NormalLaw.Cdf((threshold - Mean) / StandardDeviation);

    /// <summary>Central credible interval.</summary>
    /// <param name="level">Probability inside, above 0 and below 1.</param>
    public Interval Interval(double level = 0.95)
    {
        var reach = NormalLaw.TwoSided(level) * StandardDeviation;
        return new(Mean - reach, Mean + reach, level);
    }
}
