namespace Analytics.Statistics.Trends;

/// <summary>Pairs of points by direction, and the variance of S when there is no trend [kendall1975].</summary>
/// <param name="Concordant">Pairs in which x and y go the same way.</param>
/// <param name="Discordant">Pairs in which they go opposite ways.</param>
/// <param name="Pairs">All pairs, n(n − 1)/2.</param>
/// <param name="TiedX">Pairs equal in x.</param>
/// <param name="TiedY">Pairs equal in y.</param>
/// <param name="Variance">Variance of S, ties in both allowed for.</param>
internal sealed record KendallCounts(long Concordant, long Discordant, long Pairs, long TiedX, long TiedY, double Variance)
{
    public long S => Concordant - Discordant;

    public double TauA => (double)S / Pairs;

    public double TauB => S / Math.Sqrt((double)(Pairs - TiedX) * (Pairs - TiedY));

    public static KendallCounts Of(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        var n = x.Count;
        long concordant = 0, discordant = 0;
        for (var j = 1; j < n; j++)
        {
            for (var i = 0; i < j; i++)
            {
                var sign = x[j].CompareTo(x[i]) * y[j].CompareTo(y[i]);
                concordant += sign > 0 ? 1 : 0;
                discordant += sign < 0 ? 1 : 0;
            }
        }

        var (tx, ty) = (TieSums.Of(x), TieSums.Of(y));
        var pairs = (long)n * (n - 1) / 2;
        double m = n;
        // Ties in both columns add two terms to the usual one.
        var variance = (m * (m - 1) * (2 * m + 5) - tx.Spread - ty.Spread) / 18 + tx.Doubles * ty.Doubles / (2 * m * (m - 1));
        if (n > 2) variance += tx.Triples * ty.Triples / (9 * m * (m - 1) * (m - 2));
        return new(concordant, discordant, pairs, (long)tx.Doubles / 2, (long)ty.Doubles / 2, variance);
    }

    /// <summary>z of S: toward 0 by one with the continuity correction, 0 when S is 0.</summary>
    public double Z(bool corrected) => (S - (corrected ? Math.Sign(S) : 0)) / Math.Sqrt(Variance);
}

/// <summary>Sums over groups of t equal values: t(t − 1)(2t + 5), t(t − 1), t(t − 1)(t − 2).</summary>
internal readonly record struct TieSums(double Spread, double Doubles, double Triples)
{
    public static TieSums Of(IReadOnlyList<double> values)
    {
        double spread = 0, doubles = 0, triples = 0;
        foreach (var (_, count) in values.CountBy(v => v))
        {
            double t = count;
            spread += t * (t - 1) * (2 * t + 5);
            doubles += t * (t - 1);
            triples += t * (t - 1) * (t - 2);
        }

        return new(spread, doubles, triples);
    }
}
