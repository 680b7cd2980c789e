using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.EffectSize;

/// <summary>
/// How far two measurements of the same persons lie apart, in standard deviations. Three yardsticks are in use and they are not comparable:
/// d_z divides by the spread of the changes, d_av by the mean spread of the two days, d_rm by the former brought to the latter's scale.
/// </summary>
/// <remarks>d_av and d_rm after Lakens [lakens2013]; the interval of d_z is exact by the noncentral t law [cummingfinch2001].</remarks>
public sealed record PairedDifference : Result
{
    private PairedDifference(GroupMoments first, GroupMoments second, double correlation, double spread, double level)
    {
        (First, Second, Correlation, SpreadOfDifferences) = (first, second, correlation, spread);
        if (!(spread > 0)) throw new ArgumentException("All differences are equal: they have no spread to state the mean difference in.");
        T = Z * Math.Sqrt(first.N);
        Noncentrality = NoncentralStudentLaw.NoncentralityInterval(T, DegreesOfFreedom, level);
    }

    /// <summary>First measurement.</summary>
    public GroupMoments First { get; }

    /// <summary>Second measurement.</summary>
    public GroupMoments Second { get; }

    /// <summary>Pairs less 1.</summary>
    public double DegreesOfFreedom => First.N - 1;

    /// <summary>Mean of first minus second, in the unit of the values.</summary>
    public double Difference => First.Mean - Second.Mean;

    /// <summary>Standard deviation of the differences, in the unit of the values.</summary>
    public double SpreadOfDifferences { get; }

    /// <summary>Correlation of the two measurements; 0 when one of them has no spread.</summary>
    public double Correlation { get; }

    /// <summary>d_z: mean difference over the standard deviation of the differences.</summary>
    public double Z => Difference / SpreadOfDifferences;

    /// <summary>Exact interval of d_z.</summary>
    public Interval ZInterval => Noncentrality.Times(1 / Math.Sqrt(First.N));

    /// <summary>d_z freed of its bias; null with two pairs, where there is nothing to correct with.</summary>
    public double? CorrectedZ => DegreesOfFreedom > 1 ? SmallSample.Correction(DegreesOfFreedom) * Z : null;

    /// <summary>d_av: mean difference over √((s₁² + s₂²)/2). Comparable with the d of two groups.</summary>
    public double Average => Difference / Math.Sqrt((First.Variance + Second.Variance) / 2);

    /// <summary>d_rm: d_z √(2(1 − r)). Comparable with the d of two groups when both spreads are alike.</summary>
    public double RepeatedMeasures => Z * Math.Sqrt(2 * (1 - Correlation));

    /// <summary>Mean change over the spread of the first measurement, second minus first; null when the first has none.</summary>
    public double? ChangeInFirstSpreads => First.StandardDeviation > 0 ? -Difference / First.StandardDeviation : null;

    /// <summary>Student's t of the differences.</summary>
    public double T { get; }

    /// <summary>Two-sided p of "no mean difference".</summary>
    public double P => 2 * StudentLaw.Cdf(-Math.Abs(T), DegreesOfFreedom);

    /// <summary>Exact interval of the noncentrality.</summary>
    public Interval Noncentrality { get; }

    /// <summary>From paired values.</summary>
    /// <param name="first">At least 2 finite values, one a person.</param>
    /// <param name="second">Values of the same persons in the same order.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Lists of different length, fewer than 2 pairs, a value that is not finite, or equal differences.</exception>
    public static PairedDifference Between(IReadOnlyList<double> first, IReadOnlyList<double> second, double level = 0.95)
    {
        Require.SameLength(first, second, nameof(second));
        GroupMoments a = GroupMoments.Of(first), b = GroupMoments.Of(second);
        var spread = Moments.StandardDeviation([.. first.Zip(second, (x, y) => x - y)]);
        // Equal differences leave rounding only.
        if (spread <= 1e-12 * Math.Max(a.StandardDeviation, Math.Abs(a.Mean))) spread = 0;
        var products = a.StandardDeviation * b.StandardDeviation;
        var correlation = products > 0 ? Math.Clamp((a.Variance + b.Variance - spread * spread) / (2 * products), -1, 1) : 0;
        return new(a, b, correlation, spread, level);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Difference between two measurements of the same persons", "d_z with exact interval by the noncentral t law; d_av and d_rm [lakens2013; cummingfinch2001]",
        [
            new("d_z", Z, "SD of differences") { Interval = ZInterval, DegreesOfFreedom = DegreesOfFreedom },
            new("d_z corrected", CorrectedZ, "SD of differences") { Note = CorrectedZ is null ? "none: two pairs only" : "" },
            new("d_av", Average, "mean SD"),
            new("d_rm", RepeatedMeasures, "SD"),
            new("mean difference", Difference) { StandardError = SpreadOfDifferences / Math.Sqrt(First.N) },
            new("t", T) { DegreesOfFreedom = DegreesOfFreedom, Note = SheetProbability.Of(P) },
            new("correlation", Correlation),
        ])
    {
        Basis = $"{First.N} pairs, first minus second",
        Remarks = ["d_z, d_av and d_rm use different yardsticks; compare like with like only."],
    };
}
