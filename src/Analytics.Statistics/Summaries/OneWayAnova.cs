using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Summaries;

/// <summary>One-way analysis of variance: do the means of groups differ by more than the spread within them explains?</summary>
/// <remarks>Sums of squares from deviations, so that a large mean costs no digits [nist-strd].</remarks>
/// <param name="BetweenSquares">Sum of squares between groups.</param>
/// <param name="WithinSquares">Sum of squares within groups.</param>
/// <param name="DfBetween">Groups less 1.</param>
/// <param name="DfWithin">Values less groups.</param>
public sealed record OneWayAnova(double BetweenSquares, double WithinSquares, int DfBetween, int DfWithin) : Result
{
    /// <summary>Mean square between groups.</summary>
    public double BetweenMeanSquare => BetweenSquares / DfBetween;

    /// <summary>Mean square within groups: the pooled variance.</summary>
    public double WithinMeanSquare => WithinSquares / DfWithin;

    /// <summary>Pooled standard deviation within groups.</summary>
    public double ResidualStandardDeviation => Math.Sqrt(WithinMeanSquare);

    /// <summary>Ratio of the mean squares; infinite when no group varies within itself.</summary>
    public double F => BetweenMeanSquare / WithinMeanSquare;

    /// <summary>Probability of an F at least as large when all groups share one mean.</summary>
    public double P => FisherLaw.UpperTail(F, DfBetween, DfWithin);

    /// <summary>Share of the sum of squares that lies between groups.</summary>
    public double RSquared => BetweenSquares / (BetweenSquares + WithinSquares);

    /// <summary>Analyses groups of any size.</summary>
    /// <param name="groups">At least two groups of one value or more, one of them with two or more; all finite.</param>
    /// <exception cref="ArgumentException">Fewer than two groups, an empty group, no repeat within a group, or no spread at all.</exception>
    public static OneWayAnova Of(IReadOnlyList<IReadOnlyList<double>> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        if (groups.Count < 2) throw new ArgumentException($"{groups.Count} groups; at least 2 are needed.", nameof(groups));
        for (var i = 0; i < groups.Count; i++) Require.Sample(groups[i], 1, $"{nameof(groups)}[{i}]");
        var n = groups.Sum(g => g.Count);
        if (n == groups.Count)
            throw new ArgumentException($"Each of the {n} groups holds one value; at least one group needs 2 to judge the spread within.", nameof(groups));

        var grand = Moments.Mean([.. groups.SelectMany(g => g)]);
        double between = 0, within = 0;
        foreach (var group in groups)
        {
            var mean = Moments.Mean(group);
            between += group.Count * (mean - grand) * (mean - grand);
            if (group.Count > 1) within += (group.Count - 1) * Moments.Variance(group);
        }

        return between + within > 0
            ? new(between, within, groups.Count - 1, n - groups.Count)
            : throw new ArgumentException($"All {n} values are equal; an analysis of variance needs some spread.", nameof(groups));
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Do the groups differ?", "one-way analysis of variance",
        [
            new("F", F) { DegreesOfFreedom = DfBetween, Note = FormattableString.Invariant($"on {DfBetween} and {DfWithin} df") },
            new("p", P),
            new("mean square between", BetweenMeanSquare) { DegreesOfFreedom = DfBetween },
            new("mean square within", WithinMeanSquare) { DegreesOfFreedom = DfWithin },
            new("SD within groups", ResidualStandardDeviation) { DegreesOfFreedom = DfWithin },
            new("R²", RSquared),
        ])
    { Basis = $"{DfWithin + DfBetween + 1} values in {DfBetween + 1} groups" };
}
