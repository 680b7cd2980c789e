using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;
using Analytics.Statistics.Trends;

namespace Analytics.Statistics.Association;

/// <summary>A correlation of pairs, one pair an athlete: with interval and p.</summary>
/// <remarks>Several pairs of one athlete are not independent; use <see cref="RepeatedMeasuresCorrelation"/> for them.</remarks>
public sealed record Correlation : Result
{
    private Correlation()
    {
    }

    /// <summary>Which correlation.</summary>
    public required CorrelationKind Kind { get; init; }

    /// <summary>The correlation, −1 to 1.</summary>
    public required double Value { get; init; }

    /// <summary>Interval on Fisher's scale; null with too few pairs or at exactly ±1.</summary>
    public required Interval? Interval { get; init; }

    /// <summary>Variance the interval was made with.</summary>
    public required CorrelationVariance Variance { get; init; }

    /// <summary>Pairs.</summary>
    public required int N { get; init; }

    /// <summary>t with n − 2 degrees of freedom (Pearson, Spearman) or z (Kendall); null with two pairs or at exactly ±1.</summary>
    public required double? Statistic { get; init; }

    /// <summary>
    /// Two-sided p. Pearson: Student's t. Spearman: exact up to 10 pairs without ties, t otherwise. Kendall: exact up to 50 pairs without ties, normal law
    /// without continuity correction otherwise. Null with two pairs.
    /// </summary>
    public required double? P { get; init; }

    /// <summary>Whether <see cref="P"/> counts orders and approximates nothing.</summary>
    public required bool IsExact { get; init; }

    /// <summary>Two-sided p by the approximation, whether or not an exact one is known.</summary>
    public required double? ApproximateP { get; init; }

    /// <summary>Pairs of pairs that go the same way; Kendall only.</summary>
    public long? Concordant { get; private init; }

    /// <summary>Pairs of pairs that go opposite ways; Kendall only.</summary>
    public long? Discordant { get; private init; }

    /// <summary>Pearson's correlation; its p and interval take both columns as normal.</summary>
    /// <param name="x">At least two finite values, not all equal.</param>
    /// <param name="y">The other value of each pair.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public static Correlation Pearson(IReadOnlyList<double> x, IReadOnlyList<double> y, double level = 0.95)
    {
        Check(x, y);
        return Linear(CorrelationKind.Pearson, Paired.Sums(x, y).Correlation, x.Count, level, null, null);
    }

    /// <summary>Spearman's rank correlation.</summary>
    /// <param name="x">At least two finite values, not all equal.</param>
    /// <param name="y">The other value of each pair.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <param name="variance">Variance of the interval.</param>
    public static Correlation Spearman(
        IReadOnlyList<double> x, IReadOnlyList<double> y, double level = 0.95, CorrelationVariance variance = CorrelationVariance.BonettWright)
    {
        Check(x, y);
        double[] a = Ranks.Of(x), b = Ranks.Of(y);
        var ties = x.Distinct().Count() < x.Count || y.Distinct().Count() < y.Count;
        var exact = ties ? null : SpearmanLaw.TwoSided(a, b);
        return Linear(CorrelationKind.Spearman, Paired.Sums(a, b).Correlation, x.Count, level, variance, exact);
    }

    /// <summary>Kendall's tau-b.</summary>
    /// <param name="x">At least two finite values, not all equal.</param>
    /// <param name="y">The other value of each pair.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public static Correlation Kendall(IReadOnlyList<double> x, IReadOnlyList<double> y, double level = 0.95)
    {
        Check(x, y);
        var counts = KendallCounts.Of(x, y);
        var (n, tau) = (x.Count, Math.Clamp(counts.TauB, -1, 1));
        var z = counts.Z(corrected: false);
        double? approximate = n > 2 ? 2 * NormalLaw.Cdf(-Math.Abs(z)) : null;
        var exact = n > 2 && counts.TiedX + counts.TiedY == 0 ? KendallLaw.TwoSided(counts.Concordant, n) : null;
        return new()
        {
            Kind = CorrelationKind.Kendall,
            Value = tau,
            Interval = FisherInterval.Of(tau, n, level, CorrelationKind.Kendall),
            Variance = CorrelationVariance.Fieller,
            N = n,
            Statistic = n > 2 ? z : null,
            P = exact ?? approximate,
            IsExact = exact is not null,
            ApproximateP = approximate,
            Concordant = counts.Concordant,
            Discordant = counts.Discordant,
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new($"Correlation, {Kind}", FormattableString.Invariant($"{Kind}; interval on Fisher's scale, variance of {(Variance == CorrelationVariance.BonettWright ? "Bonett and Wright" : Variance)} {Key}; p {(IsExact ? "exact" : Approximation)}"),
    [
        new("correlation", Value) { Interval = Interval },
        new("p", P),
    ])
    {
        Basis = FormattableString.Invariant($"{N} pairs"),
        Remarks = Interval is null
            ? [Math.Abs(Value) == 1
                ? "No interval: the pairs lie exactly in order, and Fisher's scale ends at 1."
                : FormattableString.Invariant($"No interval: {N} pairs; at least {FisherInterval.Least(Kind)} are needed.")]
            : [],
    };

    private string Approximation => Kind == CorrelationKind.Kendall ? "by the normal law" : "by Student's t";

    private string Key => Variance switch
    {
        CorrelationVariance.Fisher => "[fisher1921]",
        CorrelationVariance.Fieller => "[fieller1957]",
        _ => "[bonettwright2000]",
    };

    private static void Check(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        Paired.Require(x, y, 2);
        Paired.Varies(x, nameof(x), "a correlation");
        Paired.Varies(y, nameof(y), "a correlation");
    }

    private static Correlation Linear(CorrelationKind kind, double r, int n, double level, CorrelationVariance? variance, double? exact)
    {
        var t = n > 2 && Math.Abs(r) < 1 ? r * Math.Sqrt((n - 2) / ((1 - r) * (1 + r))) : (double?)null;
        // On a line exactly no other sample is further out: p is 0 in the limit.
        var approximate = t is { } value ? 2 * StudentLaw.Cdf(-Math.Abs(value), n - 2) : n > 2 ? 0 : (double?)null;
        return new()
        {
            Kind = kind,
            Value = r,
            Interval = FisherInterval.Of(r, n, level, kind, variance),
            Variance = variance ?? FisherInterval.Usual(kind),
            N = n,
            Statistic = t,
            P = exact ?? approximate,
            IsExact = exact is not null,
            ApproximateP = approximate,
        };
    }
}
