namespace Analytics.Statistics.Distributions;

/// <summary>The binomial law: how many of n independent trials succeed.</summary>
public static class BinomialLaw
{
    /// <summary>P(X ≤ k).</summary>
    /// <param name="k">Successes; below 0 gives 0, n and more gives 1.</param>
    /// <param name="n">Trials, 0 or more.</param>
    /// <param name="probability">Probability of one success, 0 to 1.</param>
    public static double Cdf(int k, int n, double probability)
    {
        Require.AtLeast(n, 0, nameof(n));
        Require.Within(probability, 0, 1, nameof(probability));
        if (k < 0) return 0;
        // The beta law counts the same event, and keeps its digits in both tails.
        if (k >= n || probability == 0) return 1;
        return BetaLaw.Cdf(1 - probability, n - k, k + 1);
    }

    /// <summary>The least k with P(X ≤ k) ≥ p.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    /// <param name="n">Trials, 0 or more.</param>
    /// <param name="probability">Probability of one success, 0 to 1.</param>
    public static int Quantile(double p, int n, double probability)
    {
        Require.Share(p, nameof(p));
        int low = -1, high = Require.AtLeast(n, 0, nameof(n));
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (Cdf(middle, n, probability) >= p) high = middle; else low = middle;
        }

        return high;
    }
}
