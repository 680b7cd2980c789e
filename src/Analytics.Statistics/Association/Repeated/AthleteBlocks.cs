using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Association.Repeated;

/// <summary>
/// Jackknife with the athlete as the unit: values of one athlete hang together over the days, so they are left out together [efrontibshirani1993]. Above
/// <see cref="Most"/> athletes whole blocks of them are left out, which keeps the cost linear.
/// </summary>
internal static class AthleteBlocks
{
    /// <summary>Most looks of a jackknife: its degrees of freedom hardly matter beyond (our choice).</summary>
    public const int Most = 100;

    /// <summary>Blocks for so many athletes.</summary>
    public static int Count(int athletes) => Math.Min(athletes, Most);

    /// <summary>The block an athlete belongs to.</summary>
    public static int Of(int athlete, int athletes) => (int)((long)athlete * Count(athletes) / athletes);

    /// <summary>Standard error of a statistic from its values without each block; null when one of them does not exist.</summary>
    public static double? Error(IReadOnlyList<double> without)
    {
        var (b, mean) = (without.Count, without.Average());
        if (b < 3 || !double.IsFinite(mean)) return null;
        return Math.Sqrt((b - 1.0) / b * without.Sum(v => (v - mean) * (v - mean)));
    }

    /// <summary>tanh(z ± t SE) with blocks − 1 degrees of freedom.</summary>
    public static Interval? Around(double r, double? error, int blocks, double level)
    {
        Require.Share(level, nameof(level));
        if (error is not { } se || !(Math.Abs(r) < 1)) return null;
        var (z, reach) = (Math.Atanh(r), StudentLaw.TwoSided(level, blocks - 1) * se);
        return new Interval(Math.Tanh(z - reach), Math.Tanh(z + reach), level);
    }

    /// <summary>Two-sided p of no correlation.</summary>
    public static double? P(double r, double? error, int blocks)
        => error is { } se && Math.Abs(r) < 1 ? se > 0 ? 2 * StudentLaw.Cdf(-Math.Abs(Math.Atanh(r)) / se, blocks - 1) : r == 0 ? 1 : 0 : null;
}
