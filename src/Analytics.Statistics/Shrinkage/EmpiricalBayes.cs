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
    double Centre, double CentreError, double BetweenVariance, double Heterogeneity, IReadOnlyList<Shrunken> Values)
{
    /// <summary>Estimates centre and spread, then shrinks.</summary>
    /// <param name="values">At least 2 finite values.</param>
    /// <param name="standardErrors">Their standard errors, above 0, in the same order.</param>
    /// <param name="betweenVariance">Variance of the true values, 0 or more, when it is known; else it is estimated.</param>
    /// <exception cref="ArgumentException">Lists of different length, or a value out of range.</exception>
    public static EmpiricalBayes Of(IReadOnlyList<double> values, IReadOnlyList<double> standardErrors, double? betweenVariance = null)
    {
        Require.Sample(values, 2, nameof(values));
        ArgumentNullException.ThrowIfNull(standardErrors);
        if (standardErrors.Count != values.Count)
            throw new ArgumentException($"{values.Count} values but {standardErrors.Count} standard errors; one each is needed.", nameof(standardErrors));
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
            [.. values.Zip(standardErrors, (y, s) => Shrunken.Toward(y, s, centre, between))]);
    }

    private static double Weighted(IReadOnlyList<double> values, double[] weights)
        => values.Zip(weights, (y, w) => y * w).Sum() / weights.Sum();
}
