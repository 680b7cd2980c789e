using Analytics.Statistics.Results;

namespace Analytics.Statistics.Shrinkage;

/// <summary>
/// Shrinkage of a few group means toward their centre that admits how poorly a few groups tell the spread between groups [morris1983]:
/// it pulls less than plain empirical Bayes, by (k − 3)/(k − 1), and widens the errors.
/// </summary>
/// <remarks>
/// Bᵢ = (k − 3)/(k − 1) · sᵢ²/(sᵢ² + τ²), value yᵢ − Bᵢ (yᵢ − centre), squared error sᵢ² (1 − Bᵢ (k − 1)/k) + 2 Bᵢ² (yᵢ − centre)²/(k − 3). With equal errors
/// the values are those of <see cref="JamesStein"/>.
/// </remarks>
/// <param name="Centre">Weighted centre of the true means.</param>
/// <param name="BetweenVariance">Variance of the true means, 0 when the means differ no more than their errors explain.</param>
/// <param name="Values">The shrunken means, in the order given, each with its weight and error.</param>
public sealed record MorrisShrinkage(double Centre, double BetweenVariance, IReadOnlyList<Shrunken> Values) : Result
{
    /// <summary>Fewest means the formulas hold for.</summary>
    public const int Fewest = 4;

    /// <summary>Shrinks group means.</summary>
    /// <param name="means">At least 4 finite means.</param>
    /// <param name="standardErrors">Their standard errors, above 0, in the same order.</param>
    /// <exception cref="ArgumentException">Fewer than 4 means, lists of different length, or a value out of range.</exception>
    public static MorrisShrinkage Of(IReadOnlyList<double> means, IReadOnlyList<double> standardErrors)
    {
        Require.Sample(means, Fewest, nameof(means));
        var plain = EmpiricalBayes.Of(means, standardErrors);
        return new(plain.Centre, plain.BetweenVariance, [.. plain.Values.Zip(standardErrors, (value, error) => Shrink(value.Raw, error, plain.Centre, plain.BetweenVariance, means.Count))]);
    }

    /// <summary>One value toward a centre and by a spread that were estimated from <paramref name="count"/> values.</summary>
    internal static Shrunken Shrink(double raw, double error, double centre, double betweenVariance, int count)
    {
        double k = count, pull = error * error / (error * error + betweenVariance) * (k - 3) / (k - 1), off = raw - centre;
        var variance = error * error * (1 - pull * (k - 1) / k) + 2 * pull * pull * off * off / (k - 3);
        return new(raw, raw - pull * off, 1 - pull, centre, Math.Sqrt(variance));
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Shrunken means", "empirical Bayes that admits the doubt of the spread [morris1983]",
        [
            new("centre", Centre),
            new("SD of true means", Math.Sqrt(BetweenVariance)) { Note = BetweenVariance > 0 ? "" : "the means differ no more than their errors explain" },
            .. Values.Select((v, i) => v.Line(i)),
        ])
    { Basis = FormattableString.Invariant($"{Values.Count} means with their errors") };
}
