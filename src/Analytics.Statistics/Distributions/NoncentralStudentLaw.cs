namespace Analytics.Statistics.Distributions;

/// <summary>
/// The noncentral t law of (Z + δ)/s, s an independent estimate of the error with its degrees of freedom: the law of a standardised difference.
/// With infinite degrees of freedom it is the normal law about δ.
/// </summary>
public static class NoncentralStudentLaw
{
    /// <summary>Largest noncentrality the integral is meant for, in size.</summary>
    public const double LargestNoncentrality = 1e4;

    // Below this the estimated error spreads over so many powers of ten that the integral never ends.
    private const double FewestDegrees = 1e-3;

    // Further out t times the error leaves the range of a double.
    private const double LargestFinite = 1e200;

    /// <summary>P(T ≤ t), to a relative 1e-12 also in the far lower tail.</summary>
    /// <param name="t">From −1e200 to 1e200, or infinite.</param>
    /// <param name="df">Degrees of freedom, 0.001 or more; infinity for the normal law.</param>
    /// <param name="noncentrality">δ, from −10000 to 10000.</param>
    public static double Cdf(double t, double df, double noncentrality) => Lower(t, df, noncentrality).Probability;

    /// <summary>P(T &gt; t), to a relative 1e-12 also in the far upper tail.</summary>
    /// <param name="t">From −1e200 to 1e200, or infinite.</param>
    /// <param name="df">Degrees of freedom, 0.001 or more; infinity for the normal law.</param>
    /// <param name="noncentrality">δ, from −10000 to 10000.</param>
    public static double UpperTail(double t, double df, double noncentrality) => Lower(-t, df, -noncentrality).Probability;

    /// <summary>The t with P(T ≤ t) = p, for example 3.6157466 for p = 0.975, df = 9, δ = 1.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    /// <param name="df">Degrees of freedom, 0.001 or more; infinity for the normal law.</param>
    /// <param name="noncentrality">δ, from −10000 to 10000.</param>
    public static double Quantile(double p, double df, double noncentrality)
    {
        Require.Share(p, nameof(p));
        // The smaller tail is the one with digits: 1 − p is exact in doubles for p of a half and more.
        if (p > 0.5) return -Quantile(1 - p, df, -noncentrality);
        var start = noncentrality + NormalLaw.Quantile(p);
        return LogNewton.Solve(t => Lower(t, df, noncentrality) is var sum ? (sum.Probability, sum.ByT) : default, p, start, rising: true);
    }

    /// <summary>The δ under which P(T ≤ t) = p: limit of the noncentrality once t was seen.</summary>
    /// <param name="t">Observed t, from −10000 to 10000.</param>
    /// <param name="df">Degrees of freedom, 0.001 or more; infinity for the normal law.</param>
    /// <param name="p">Above 0 and below 1: 0.975 gives a lower limit, 0.025 an upper one.</param>
    public static double Noncentrality(double t, double df, double p)
    {
        Require.Share(p, nameof(p));
        Require.Within(t, -LargestNoncentrality, LargestNoncentrality, nameof(t));
        if (p > 0.5) return -Noncentrality(-t, df, 1 - p);
        var start = t - NormalLaw.Quantile(p);
        return LogNewton.Solve(d => Sum(t, df, d) is var sum ? (sum.Probability, sum.ByNoncentrality) : default, p, start, rising: false);
    }

    /// <summary>Exact interval of the noncentrality from an observed t: both limits are found from the law, so it is not symmetric about t.</summary>
    /// <param name="t">Observed t, from −10000 to 10000.</param>
    /// <param name="df">Degrees of freedom, 0.001 or more; infinity for the normal law.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static Interval NoncentralityInterval(double t, double df, double level = 0.95)
    {
        Require.Share(level, nameof(level));
        return new(Noncentrality(t, df, (1 + level) / 2), Noncentrality(t, df, (1 - level) / 2), level);
    }

    private static NoncentralStudentSum Lower(double t, double df, double delta)
    {
        Require.Within(delta, -LargestNoncentrality, LargestNoncentrality, "noncentrality");
        if (double.IsFinite(Require.Number(t, nameof(t)))) Require.Within(t, -LargestFinite, LargestFinite, nameof(t));
        return Sum(t, df, delta);
    }

    private static NoncentralStudentSum Sum(double t, double df, double delta)
    {
        if (Require.DegreesOfFreedom(df, nameof(df)) < FewestDegrees) Require.Within(df, FewestDegrees, double.PositiveInfinity, nameof(df));
        if (double.IsInfinity(t)) return new(t > 0 ? 1 : 0, 0, 0);
        if (double.IsPositiveInfinity(df))
        {
            var density = Math.Exp(LogNormalTail.LogDensity(t - delta));
            return new(NormalLaw.Cdf(t - delta), density, -density);
        }

        var sum = NoncentralStudentSum.Of(t, df, delta);
        return sum with { Probability = Math.Min(1, sum.Probability) };
    }
}
