using System.Numerics;

namespace Analytics.Statistics.Association;

/// <summary>The exact law of Σd² of two rankings without ties: every order equally likely.</summary>
internal static class SpearmanLaw
{
    /// <summary>Pairs up to which the law is counted out.</summary>
    public const int Most = 10;

    /// <summary>Two-sided p: twice the smaller tail, at most 1; null beyond <see cref="Most"/> or below three pairs.</summary>
    public static double? TwoSided(double[] a, double[] b)
    {
        var n = a.Length;
        if (n is > Most or < 3) return null;
        var seen = (int)Math.Round(a.Zip(b, (x, y) => (x - y) * (x - y)).Sum());
        var law = Of(n);
        double below = 0, above = 0;
        for (var s = 0; s < law.Length; s++)
        {
            if (s <= seen) below += law[s];
            if (s >= seen) above += law[s];
        }

        return Math.Min(1, 2 * Math.Min(below, above));
    }

    // Ranks are given out one by one; for each set already given, how likely every Σd² is.
    private static double[] Of(int n)
    {
        var most = n * (n * n - 1) / 3;
        var laws = new double[1 << n][];
        laws[0] = new double[most + 1];
        laws[0][0] = 1;
        for (var given = 0; given < laws.Length - 1; given++)
        {
            var law = laws[given];
            var next = BitOperations.PopCount((uint)given);
            for (var rank = 0; rank < n; rank++)
            {
                if ((given & (1 << rank)) != 0) continue;
                var to = laws[given | (1 << rank)] ??= new double[most + 1];
                var d = (rank - next) * (rank - next);
                for (var s = 0; s + d <= most; s++) to[s + d] += law[s] / (n - next);
            }
        }

        return laws[^1];
    }
}
