using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.EffectSize;

/// <summary>How far two separate groups lie apart in pooled standard deviations: Cohen's d and Hedges' g with exact intervals [cohen1988; hedgesolkin1985].</summary>
/// <remarks>The interval comes from the noncentral t law [cummingfinch2001]; it is exact for normal groups of equal spread and not symmetric about d.</remarks>
/// <example>
/// <code>
/// var apart = GroupDifference.Between(linemen, backs);
/// apart.G;            // freed of the small-sample bias
/// apart.GInterval;    // exact
/// </code>
/// </example>
public sealed record GroupDifference : Result
{
    private GroupDifference(GroupMoments first, GroupMoments second, double level)
    {
        (First, Second) = (first, second);
        DegreesOfFreedom = first.N + second.N - 2;
        PooledSd = Math.Sqrt(((first.N - 1) * first.Variance + (second.N - 1) * second.Variance) / DegreesOfFreedom);
        if (!(PooledSd > 0)) throw new ArgumentException("Neither group has any spread: a difference cannot be stated in standard deviations of 0.");
        T = D / Scale;
        Noncentrality = NoncentralStudentLaw.NoncentralityInterval(T, DegreesOfFreedom, level);
    }

    /// <summary>The first group.</summary>
    public GroupMoments First { get; }

    /// <summary>The second group.</summary>
    public GroupMoments Second { get; }

    /// <summary>n₁ + n₂ − 2.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>Pooled standard deviation, in the unit of the values.</summary>
    public double PooledSd { get; }

    /// <summary>Mean of the first less mean of the second, in the unit of the values.</summary>
    public double Difference => First.Mean - Second.Mean;

    /// <summary>Cohen's d: the difference in pooled standard deviations.</summary>
    public double D => Difference / PooledSd;

    /// <summary>Exact interval of d.</summary>
    public Interval DInterval => Noncentrality.Times(Scale);

    /// <summary>Hedges' g: d freed of its bias, which makes d of small groups too large.</summary>
    public double G => Correction * D;

    /// <summary>Interval of g: that of d times the same factor.</summary>
    public Interval GInterval => DInterval.Times(Correction);

    /// <summary>Student's t of equal spreads.</summary>
    public double T { get; }

    /// <summary>Two-sided p of "no difference", equal spreads assumed; see <see cref="WelchTest"/> for unequal ones.</summary>
    public double P => 2 * StudentLaw.Cdf(-Math.Abs(T), DegreesOfFreedom);

    /// <summary>Exact interval of the noncentrality.</summary>
    public Interval Noncentrality { get; }

    /// <summary>Large-sample standard error of d, √(1/n₁ + 1/n₂ + d²/(2(n₁ + n₂))); for pooling of studies, the interval does not use it.</summary>
    public double LargeSampleError => Math.Sqrt(Scale * Scale + D * D / (2 * (First.N + Second.N)));

    /// <summary>Chance that one of the first group exceeds one of the second.</summary>
    public double ChanceOfExceeding => Overlap.ChanceOfExceeding(D);

    private double Correction => SmallSample.Correction(DegreesOfFreedom);

    private double Scale => Math.Sqrt(1.0 / First.N + 1.0 / Second.N);

    /// <summary>From the values themselves.</summary>
    /// <param name="first">At least 2 finite values.</param>
    /// <param name="second">At least 2 finite values, of other persons.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Too few values, a value that is not finite, or no spread at all.</exception>
    public static GroupDifference Between(IReadOnlyList<double> first, IReadOnlyList<double> second, double level = 0.95)
        => Between(GroupMoments.Of(first), GroupMoments.Of(second), level);

    /// <summary>From published means and standard deviations.</summary>
    /// <param name="first">First group.</param>
    /// <param name="second">Second group, of other persons.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Neither group has spread.</exception>
    public static GroupDifference Between(GroupMoments first, GroupMoments second, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        return new(first, second, level);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Difference between two groups", "Hedges' g with the exact correction, interval by the noncentral t law [hedgesolkin1985; cummingfinch2001]",
        [
            new("g", G, "SD") { Interval = GInterval, DegreesOfFreedom = DegreesOfFreedom },
            new("d", D, "SD") { Interval = DInterval, StandardError = LargeSampleError },
            new("difference of means", Difference) { StandardError = PooledSd * Scale },
            new("pooled SD", PooledSd),
            new("t", T) { DegreesOfFreedom = DegreesOfFreedom, Note = SheetProbability.Of(P) + ", equal spreads assumed" },
            new("chance of exceeding", 100 * ChanceOfExceeding, "%") { Note = "one of the first group over one of the second" },
        ])
    { Basis = $"{First.N} and {Second.N} values of separate persons" };
}
