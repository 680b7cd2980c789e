using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Association;

/// <summary>Interval of a correlation on Fisher's scale: tanh(atanh r ± z SE) [fisher1921].</summary>
public static class FisherInterval
{
    /// <summary>The interval of a correlation known only by its value and number of pairs.</summary>
    /// <param name="r">The correlation, −1 to 1.</param>
    /// <param name="n">Pairs.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    /// <param name="kind">Which correlation.</param>
    /// <param name="variance">Which variance; null for the usual one: Fisher, Bonett and Wright, Fieller for the three kinds in turn.</param>
    /// <returns>The interval; null with too few pairs (4; for Kendall 5) or when r is exactly −1 or 1, where the scale ends.</returns>
    /// <exception cref="ArgumentException">The variance belongs to another kind of correlation.</exception>
    public static Interval? Of(
        double r, int n, double level = 0.95, CorrelationKind kind = CorrelationKind.Pearson, CorrelationVariance? variance = null)
    {
        if (!(Math.Abs(r) <= 1)) throw new ArgumentOutOfRangeException(nameof(r), r, FormattableString.Invariant($"r is {r}; allowed: -1 to 1."));
        var z = NormalLaw.TwoSided(level);
        var chosen = variance ?? Usual(kind);
        var spread = (kind, chosen) switch
        {
            (CorrelationKind.Pearson, CorrelationVariance.Fisher) => 1.0 / (n - 3),
            (CorrelationKind.Spearman, CorrelationVariance.Fieller) => 1.06 / (n - 3),
            (CorrelationKind.Spearman, CorrelationVariance.BonettWright) => (1 + r * r / 2) / (n - 3),
            (CorrelationKind.Kendall, CorrelationVariance.Fieller) => 0.437 / (n - 4),
            _ => throw new ArgumentException($"The variance of {chosen} is not one of {kind}'s correlation; leave it out for the usual one.", nameof(variance)),
        };
        if (n < Least(kind) || Math.Abs(r) == 1) return null;
        var (centre, reach) = (Math.Atanh(r), z * Math.Sqrt(spread));
        return new Interval(Math.Tanh(centre - reach), Math.Tanh(centre + reach), level);
    }

    internal static int Least(CorrelationKind kind) => kind == CorrelationKind.Kendall ? 5 : 4;

    internal static CorrelationVariance Usual(CorrelationKind kind) => kind switch
    {
        CorrelationKind.Pearson => CorrelationVariance.Fisher,
        CorrelationKind.Spearman => CorrelationVariance.BonettWright,
        _ => CorrelationVariance.Fieller,
    };
}
