using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Reliability;

/// <summary>Spearman's correlation of ranks, ties given their middle rank, with the p of Student's t on n − 2 df.</summary>
internal static class RankCorrelation
{
    /// <summary>Null when one side does not vary.</summary>
    public static (double Value, double P)? Of(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        double[] a = Ranks(x), b = Ranks(y);
        double meanRank = (a.Length + 1) / 2.0, aa = 0, bb = 0, ab = 0;
        for (var i = 0; i < a.Length; i++)
        {
            double da = a[i] - meanRank, db = b[i] - meanRank;
            aa += da * da;
            bb += db * db;
            ab += da * db;
        }

        if (aa <= 0 || bb <= 0 || a.Length < 3) return null;
        var r = Math.Clamp(ab / Math.Sqrt(aa * bb), -1, 1);
        var t = r * r < 1 ? Math.Abs(r) * Math.Sqrt((a.Length - 2) / (1 - r * r)) : double.PositiveInfinity;
        return (r, double.IsPositiveInfinity(t) ? 0 : 2 * StudentLaw.Cdf(-t, a.Length - 2));
    }

    private static double[] Ranks(IReadOnlyList<double> values)
        => [.. values.Select(v => values.Count(o => o < v) + (values.Count(o => o == v) + 1) / 2.0)];
}
