namespace Analytics.Statistics.Trends;

/// <summary>The exact law of Kendall's count without ties: every order of n values equally likely [kendall1975].</summary>
internal static class KendallLaw
{
    /// <summary>Values up to which the exact law is used.</summary>
    public const int Most = 50;

    /// <summary>Two-sided p of a number of concordant pairs: twice the smaller tail, at most 1; null beyond <see cref="Most"/> values.</summary>
    public static double? TwoSided(long concordant, int n)
    {
        if (n > Most) return null;
        var law = Of(n);
        double below = 0, above = 0;
        for (var k = 0; k < law.Length; k++)
        {
            if (k <= concordant) below += law[k];
            if (k >= concordant) above += law[k];
        }

        return Math.Min(1, 2 * Math.Min(below, above));
    }

    // The m-th value adds 0 to m − 1 concordant pairs, each as likely.
    private static double[] Of(int n)
    {
        double[] law = [1];
        for (var m = 2; m <= n; m++)
        {
            var next = new double[law.Length + m - 1];
            for (var k = 0; k < law.Length; k++)
            {
                for (var add = 0; add < m; add++) next[k + add] += law[k] / m;
            }

            law = next;
        }

        return law;
    }
}
