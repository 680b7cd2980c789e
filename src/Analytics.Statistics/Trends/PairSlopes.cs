namespace Analytics.Statistics.Trends;

/// <summary>Slopes between all pairs of points.</summary>
internal static class PairSlopes
{
    public static double[] Sorted(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        var slopes = new List<double>();
        for (var j = 1; j < x.Count; j++)
        {
            for (var i = 0; i < j; i++)
            {
                if (!x[i].Equals(x[j])) slopes.Add((y[j] - y[i]) / (x[j] - x[i]));
            }
        }

        slopes.Sort();
        return [.. slopes];
    }

    public static double Middle(double[] sorted) => (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;

    /// <summary>Variance of S without a trend; pairs tied in x or y taken off [sen1968].</summary>
    public static double Variance(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        double n = x.Count;
        // Ties in both at once are taken off twice, which may leave less than nothing.
        return Math.Max(0, (n * (n - 1) * (2 * n + 5) - TieSums.Of(x).Spread - TieSums.Of(y).Spread) / 18);
    }

    public static (double Low, double High)? Limits(double[] sorted, double reach, SlopeRanks ranks)
    {
        double low = (sorted.Length - reach) / 2, high = (sorted.Length + reach) / 2 + 1;
        if (ranks == SlopeRanks.Rounded) (low, high) = (Math.Round(low), Math.Round(high - 1) + 1);
        return low >= 1 && high <= sorted.Length ? (At(sorted, low), At(sorted, high)) : null;
    }

    // Rank from 1, whole or between two slopes.
    private static double At(double[] sorted, double rank)
    {
        var below = (int)rank;
        return below == sorted.Length ? sorted[^1] : sorted[below - 1] + (rank - below) * (sorted[below] - sorted[below - 1]);
    }
}
