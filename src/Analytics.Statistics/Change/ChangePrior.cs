using Analytics.Statistics.Results;
using Analytics.Statistics.Shrinkage;

namespace Analytics.Statistics.Change;

/// <summary>What was believed about an athlete's true change before the test: a normal law, named.</summary>
public sealed record ChangePrior : Result
{
    private ChangePrior(double mean, double standardDeviation, string basis) => (Mean, StandardDeviation, Basis) = (mean, standardDeviation, basis);

    /// <summary>Expected true change, in the unit of the test.</summary>
    public double Mean { get; }

    /// <summary>SD of true changes, 0 or more; 0 says that all change alike.</summary>
    public double StandardDeviation { get; }

    /// <summary>Where it comes from, in words a report can print.</summary>
    public string Basis { get; }

    /// <summary>Athletes it was estimated from; 0 for a stated prior.</summary>
    public int Athletes { get; private init; }

    /// <summary>Standard error of the mean; 0 for a stated prior.</summary>
    public double MeanError { get; private init; }

    /// <summary>Interval of the SD; null for a stated prior.</summary>
    public Interval? SpreadInterval { get; private init; }

    /// <summary>The same prior with its SD at the low and the high end of <see cref="SpreadInterval"/>; empty for a stated prior.</summary>
    public IReadOnlyList<ChangePrior> Alternatives { get; private init; } = [];

    /// <summary>A prior set by a person.</summary>
    /// <param name="mean">Expected true change, in the unit of the test; 0 says neither gain nor loss is expected.</param>
    /// <param name="standardDeviation">SD of true changes, above 0.</param>
    /// <param name="basis">Who set it and why, in words a report can print.</param>
    public static ChangePrior Stated(double mean, double standardDeviation, string basis)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(basis);
        return new(Require.Finite(mean, nameof(mean)), Require.Positive(standardDeviation, nameof(standardDeviation)), basis);
    }

    /// <summary>
    /// A prior estimated from the squad: mean and spread of true changes, from all observed changes and their errors (moment estimator, Q-profile
    /// interval). The athlete's own change is among them; with ten athletes and more that matters little.
    /// </summary>
    /// <param name="changes">Changes of at least 4 athletes.</param>
    /// <param name="level">Coverage of the interval of the spread, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Fewer than 4 changes.</exception>
    public static ChangePrior OfSquad(IReadOnlyList<IndividualChange> changes, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(changes);
        if (changes.Count < MorrisShrinkage.Fewest)
            throw new ArgumentException(FormattableString.Invariant($"changes holds {changes.Count} athletes; at least 4 are needed to see a spread of true changes. State a prior instead."), nameof(changes));
        if (changes.Any(c => c is null)) throw new ArgumentException("One of the changes is null; leave an athlete without a change out.", nameof(changes));
        double[] values = [.. changes.Select(c => c.Difference)], errors = [.. changes.Select(c => c.StandardError)];
        var fit = EmpiricalBayes.Of(values, errors);
        var variance = fit.BetweenInterval(level);
        ChangePrior At(double between, string words)
        {
            var known = EmpiricalBayes.Of(values, errors, between);
            return new(known.Centre, Math.Sqrt(between), words) { MeanError = known.CentreError };
        }

        return At(fit.BetweenVariance, FormattableString.Invariant($"estimated from {changes.Count} changes of the squad")) with
        {
            Athletes = changes.Count,
            SpreadInterval = new(Math.Sqrt(variance.Low), Math.Sqrt(variance.High), level),
            Alternatives = [At(variance.Low, "SD at its lower limit"), At(variance.High, "SD at its upper limit")],
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Prior of the true change", SpreadInterval is null ? "stated" : "empirical Bayes, moment estimator, Q-profile interval [dersimonianlaird1986; viechtbauer2007]",
        [
            new("mean", Mean) { StandardError = SpreadInterval is null ? null : MeanError },
            new("SD", StandardDeviation)
            {
                Interval = SpreadInterval,
                Note = EmpiricalBayes.SpreadNote(StandardDeviation, SpreadInterval),
            },
        ])
    { Basis = Basis };
}
