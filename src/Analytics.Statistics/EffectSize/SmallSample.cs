using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.EffectSize;

/// <summary>What a small sample does to a standard deviation and to what is divided by one.</summary>
public static class SmallSample
{
    /// <summary>
    /// J(df) = Γ(df/2)/(√(df/2) Γ((df − 1)/2)): the factor that frees a standardised difference of its bias, exact, by lgamma [hedgesolkin1985].
    /// </summary>
    /// <param name="df">Degrees of freedom of the standard deviation divided by, above 1 and finite.</param>
    public static double Correction(double df)
    {
        if (!(double.IsFinite(df) && df > 1))
            throw new ArgumentOutOfRangeException(nameof(df), df, FormattableString.Invariant($"df is {df}; allowed: above 1 and finite. With 1 degree of freedom a standardised difference has no mean to correct."));
        return Math.Exp(GammaLaw.LogGamma(df / 2) - GammaLaw.LogGamma((df - 1) / 2)) / Math.Sqrt(df / 2);
    }

    /// <summary>The usual approximation of <see cref="Correction"/>, 1 − 3/(4 df − 1); for comparison with older tables only.</summary>
    /// <param name="df">Degrees of freedom, above 1 and finite.</param>
    public static double ApproximateCorrection(double df) => 1 - 3 / (4 * Require.Above(df, 1, nameof(df)) - 1);

    /// <summary>c₄(n): what the standard deviation of n normal values is of the true one on average, 0.940 for n = 5 [wheelerchambers1992].</summary>
    /// <param name="n">Number of values, at least 2.</param>
    public static double SpreadBias(int n) => SpreadBiasOfDegrees(Require.AtLeast(n, 2, nameof(n)) - 1);

    /// <summary>The same for a standard deviation of any degrees of freedom, such as a typical error.</summary>
    /// <param name="df">Degrees of freedom, above 0 and finite.</param>
    public static double SpreadBiasOfDegrees(double df)
        => Math.Exp(GammaLaw.LogGamma((Require.Positive(df, nameof(df)) + 1) / 2) - GammaLaw.LogGamma(df / 2)) / Math.Sqrt(df / 2);
}
