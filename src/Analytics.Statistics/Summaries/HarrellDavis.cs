using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Summaries;

/// <summary>Quantile as a weighted mean of all sorted values, steadier than a single place in small samples [harrelldavis1982].</summary>
public static class HarrellDavis
{
    /// <summary>Σ wᵢ xᵢ with wᵢ = I(i/n) − I((i − 1)/n), I the incomplete beta function with (n + 1) p and (n + 1)(1 − p).</summary>
    /// <param name="values">At least one finite value, in any order. One wild value moves this quantile, as it moves a mean.</param>
    /// <param name="p">Share of the values below, above 0 and below 1.</param>
    public static double Of(IReadOnlyList<double> values, double p)
    {
        Require.Sample(values, 1, nameof(values));
        Require.Share(p, nameof(p));
        var n = values.Count;
        double sum = 0, before = 0;
        var i = 0;
        foreach (var value in values.Order())
        {
            i++;
            var upTo = i == n ? 1 : BetaLaw.Cdf((double)i / n, (n + 1) * p, (n + 1) * (1 - p));
            sum += (upTo - before) * value;
            before = upTo;
        }

        return sum;
    }
}
