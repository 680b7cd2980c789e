using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;
using Analytics.Statistics.Shrinkage;

namespace Analytics.Statistics.Change;

/// <summary>What to believe about an athlete's true change once a stated prior is combined with the test (normal with normal).</summary>
/// <param name="Mean">Posterior mean, in the unit of the test.</param>
/// <param name="StandardDeviation">Posterior standard deviation.</param>
public sealed record ChangePosterior(double Mean, double StandardDeviation) : Result
{
    /// <summary>The prior behind it, in words a report can print.</summary>
    public string Prior { get; private init; } = "stated";

    /// <summary>The posterior under the alternatives of an estimated prior; empty under a stated one.</summary>
    public IReadOnlyList<ChangePosterior> Alternatives { get; private init; } = [];

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
        return new(mean, Math.Sqrt(1 / (data + prior))) { Prior = FormattableString.Invariant($"normal, mean {priorMean:0.####}, SD {priorSd:0.####}") };
    }

    /// <summary>
    /// Combines a named prior with a change. Under a prior estimated from the squad the doubt of its mean and of its spread is carried along by
    /// Morris's formula [morris1983], which pulls less and widens the error.
    /// </summary>
    /// <param name="change">The change; its error is taken as known, so few degrees of freedom make the result a little too sure.</param>
    /// <param name="prior">The prior.</param>
    public static ChangePosterior Of(IndividualChange change, ChangePrior prior)
    {
        ArgumentNullException.ThrowIfNull(change);
        ArgumentNullException.ThrowIfNull(prior);
        double error = change.PositiveError, between = prior.StandardDeviation * prior.StandardDeviation;
        var value = prior.Athletes > 0
            ? MorrisShrinkage.Shrink(change.Difference, error, prior.Mean, between, prior.Athletes)
            : Shrunken.Toward(change.Difference, error, prior.Mean, between);
        // Where the spread is taken as known the error of an estimated centre is still added.
        var centre = prior.Athletes > 0 ? 0 : (1 - value.Weight) * prior.MeanError;
        return new(value.Value, Math.Sqrt(value.StandardError * value.StandardError + centre * centre))
        {
            Prior = FormattableString.Invariant($"normal, mean {prior.Mean:0.####}, SD {prior.StandardDeviation:0.####}, {prior.Basis}"),
            Alternatives = [.. prior.Alternatives.Select(p => Of(change, p))],
        };
    }

    /// <summary>P(true change &gt; threshold).</summary>
    /// <param name="threshold">In the unit of the test.</param>
    public double Above(double threshold) => NormalLaw.Cdf((Mean - Require.Finite(threshold, nameof(threshold))) / StandardDeviation);

    /// <summary>P(true change &lt; threshold).</summary>
    /// <param name="threshold">In the unit of the test.</param>
    public double Below(double threshold) => NormalLaw.Cdf((Require.Finite(threshold, nameof(threshold)) - Mean) / StandardDeviation);

    /// <summary>Central credible interval.</summary>
    /// <param name="level">Probability inside, above 0 and below 1.</param>
    public Interval Interval(double level = 0.95)
    {
        var reach = NormalLaw.TwoSided(level) * StandardDeviation;
        return new(Mean - reach, Mean + reach, level);
    }

    /// <summary>Probabilities of the true change lying beyond the smallest worthwhile change on either side, and between.</summary>
    /// <param name="worthwhile">Smallest worthwhile change, 0 or more, in the unit of the test.</param>
    public PosteriorShares Shares(double worthwhile)
    {
        Require.NotNegative(worthwhile, nameof(worthwhile));
        double above = Above(worthwhile), below = Below(-worthwhile);
        return new(above, Below(worthwhile) - below, below, worthwhile, Prior)
        {
            Alternatives = [.. Alternatives.Select(a => a.Shares(worthwhile))],
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "True change after the test", "normal prior with normal error",
        [new("true change", Mean) { Interval = Interval(), StandardError = StandardDeviation }])
    { Basis = "one change of known error; prior: " + Prior };
}
