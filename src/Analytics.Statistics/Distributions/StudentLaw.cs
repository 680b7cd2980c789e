using MathNet.Numerics.Distributions;

namespace Analytics.Statistics.Distributions;

/// <summary>Student's t law; with infinite degrees of freedom it is the standard normal law.</summary>
public static class StudentLaw
{
    // Above this the incomplete beta function loses digits (1e-8 in the tail at ten million); the integral does not.
    private const double Large = 1e4;

    /// <summary>P(T ≤ t).</summary>
    /// <param name="t">Any number.</param>
    /// <param name="df">Degrees of freedom, above 0, not necessarily whole; infinity for the normal law.</param>
    public static double Cdf(double t, double df)
    {
        if (double.IsPositiveInfinity(Require.DegreesOfFreedom(df, nameof(df)))) return NormalLaw.Cdf(t);
        Require.Number(t, nameof(t));
        if (double.IsInfinity(t)) return t > 0 ? 1 : 0;
        return df > Large ? NoncentralStudentSum.Of(t, df, 0).Probability : StudentT.CDF(0, 1, df, t);
    }

    /// <summary>The t with P(T ≤ t) = p, for example 2.262157 for p = 0.975 and df = 9.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    /// <param name="df">Degrees of freedom, above 0; infinity for the normal law.</param>
    public static double Quantile(double p, double df)
    {
        Require.Share(p, nameof(p));
        if (double.IsPositiveInfinity(Require.DegreesOfFreedom(df, nameof(df)))) return NormalLaw.Quantile(p);
        if (p == 0.5) return 0;
        var upper = QuantileSearch.Positive(
            t => Cdf(t, df), t => StudentT.PDF(0, 1, df, t), Math.Max(p, 1 - p));
        return p > 0.5 ? upper : -upper;
    }

    /// <summary>The t that leaves (1 − level)/2 on either side.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    /// <param name="df">Degrees of freedom, above 0; infinity for the normal law.</param>
    public static double TwoSided(double level, double df) => Quantile((1 + Require.Share(level, nameof(level))) / 2, df);
}
