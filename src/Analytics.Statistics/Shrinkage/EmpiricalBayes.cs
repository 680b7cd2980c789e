using Analytics.Statistics.Results;

namespace Analytics.Statistics.Shrinkage;

/// <summary>
/// Shrinkage of several values of unequal error toward their common centre, the spread of the true values estimated from the values
/// themselves (moment estimator of DerSimonian and Laird [dersimonianlaird1986]).
/// </summary>
/// <param name="Centre">Weighted centre of the true values.</param>
/// <param name="CentreError">Standard error of the centre.</param>
/// <param name="BetweenVariance">Variance of the true values, 0 when the values differ no more than their errors explain.</param>
/// <param name="Heterogeneity">Weighted sum of squares about the fixed centre (Cochran's Q), expected to be n − 1 without true differences.</param>
/// <param name="Values">The shrunken values, in the order given.</param>
public sealed record EmpiricalBayes(
    double Centre, double CentreError, double BetweenVariance, double Heterogeneity, IReadOnlyList<Shrunken> Values) : Result
{
    private IReadOnlyList<double> Errors { get; init; } = [];

    /// <summary>Estimates centre and spread, then shrinks.</summary>
    /// <param name="values">At least 2 finite values.</param>
    /// <param name="standardErrors">Their standard errors, above 0, in the same order.</param>
    /// <param name="betweenVariance">Variance of the true values, 0 or more, when it is known; else it is estimated.</param>
    /// <exception cref="ArgumentException">Lists of different length, or a value out of range.</exception>
    public static EmpiricalBayes Of(IReadOnlyList<double> values, IReadOnlyList<double> standardErrors, double? betweenVariance = null)
    {
        Require.Sample(values, 2, nameof(values));
        Require.SameLength(values, standardErrors, nameof(standardErrors));
        foreach (var error in standardErrors) Require.Positive(error, nameof(standardErrors));

        var fixedWeights = standardErrors.Select(s => 1 / (s * s)).ToArray();
        var fixedCentre = Weighted(values, fixedWeights);
        var heterogeneity = values.Zip(fixedWeights, (y, w) => w * (y - fixedCentre) * (y - fixedCentre)).Sum();
        var total = fixedWeights.Sum();
        var between = betweenVariance is { } known
            ? Require.NotNegative(known, nameof(betweenVariance))
            : Math.Max(0, (heterogeneity - (values.Count - 1)) / (total - fixedWeights.Sum(w => w * w) / total));

        var weights = standardErrors.Select(s => 1 / (between + s * s)).ToArray();
        var centre = Weighted(values, weights);
        return new(
            centre, Math.Sqrt(1 / weights.Sum()), between, heterogeneity,
            [.. values.Zip(standardErrors, (y, s) => Shrunken.Toward(y, s, centre, between))]) { Errors = standardErrors };
    }

    /// <summary>
    /// Interval of the variance of the true values by the Q-profile [viechtbauer2007]: the variances under which the weighted sum of squares is
    /// not unusual. Exact for normal values of known error; the lower limit is 0 when the values need no spread.
    /// </summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Interval BetweenInterval(double level = 0.95)
    {
        Require.Share(level, nameof(level));
        if (Errors.Count != Values.Count) throw new InvalidOperationException("This result was put together by hand and does not hold the errors of its values; make it with EmpiricalBayes.Of.");
        double[] values = [.. Values.Select(v => v.Raw)];
        return new(
            QProfile.VarianceAt(values, Errors, (1 + level) / 2), QProfile.VarianceAt(values, Errors, (1 - level) / 2), level);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet()
    {
        var between = Errors.Count == Values.Count ? BetweenInterval() : (Interval?)null;
        return new(
            "Shrunken values", "normal–normal empirical Bayes, spread by the moment estimator [dersimonianlaird1986]",
            [
                new("centre", Centre) { StandardError = CentreError },
                new("SD of true values", Math.Sqrt(BetweenVariance))
                {
                    Interval = between is { } b ? b with { Low = Math.Sqrt(b.Low), High = Math.Sqrt(b.High) } : null,
                    Note = SpreadNote(BetweenVariance, between),
                },
                .. Values.Select((v, i) => v.Line(i)),
            ])
        {
            Basis = FormattableString.Invariant($"{Values.Count} values with their errors"),
            Remarks = ["The errors take centre and spread as known: too small when there are few values (see MorrisShrinkage)."],
        };
    }

    internal static string SpreadNote(double betweenVariance, Interval? interval) => betweenVariance > 0 ? ""
        : interval is { High: 0 } ? "the values are more alike than their errors allow: the errors may be too large"
        : "the values differ no more than their errors explain";

    private static double Weighted(IReadOnlyList<double> values, double[] weights)
        => values.Zip(weights, (y, w) => y * w).Sum() / weights.Sum();
}
