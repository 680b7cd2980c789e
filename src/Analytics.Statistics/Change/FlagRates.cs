using Analytics.Statistics.Distributions;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Analytics.Statistics.Change;

/// <summary>How often flags are raised, in closed form or by one integral. Changes are between two single occasions with normal errors.</summary>
public static class FlagRates
{
    /// <summary>
    /// Rate at which an athlete who has not changed shows a change beyond the smallest worthwhile one: 2 Φ(−(SWC/TE)/√2).
    /// At a reliability of 0.90 and SWC = 0.2 SD it is 65 %: exceeding the smallest worthwhile change alone is no evidence.
    /// </summary>
    /// <param name="worthwhile">Smallest worthwhile change in typical errors, 0 or more.</param>
    public static double PointBeyondWorthwhile(double worthwhile)
        => 2 * NormalLaw.Cdf(-Require.NotNegative(worthwhile, nameof(worthwhile)) / Math.Sqrt(2));

    /// <summary>
    /// False-flag rate when the multiplier is taken from the normal law although the typical error was estimated:
    /// 2 P(T ≤ −z). It is the reason reports use Student's multiplier: 8.2 % instead of 5 % with 9 degrees of freedom.
    /// </summary>
    /// <param name="degreesOfFreedom">Degrees of freedom of the typical error.</param>
    /// <param name="level">Coverage meant, above 0 and below 1.</param>
    public static double NormalMultiplier(double degreesOfFreedom, double level = 0.95)
        => 2 * StudentLaw.Cdf(-NormalLaw.TwoSided(level), degreesOfFreedom);

    /// <summary>
    /// Quantile of the false-flag rate of the normal multiplier over reliability studies: each study over- or understates the error,
    /// and everyone judged by it shares that luck. 2 Φ(−z √(X/ν)), X chi-square.
    /// </summary>
    /// <param name="quantile">Share of studies with a lower rate, above 0 and below 1.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom of the typical error, finite.</param>
    /// <param name="level">Coverage meant, above 0 and below 1.</param>
    public static double OfOneStudy(double quantile, double degreesOfFreedom, double level = 0.95)
        => 2 * NormalLaw.Cdf(-NormalLaw.TwoSided(level)
            * Math.Sqrt(ChiSquareLaw.Quantile(1 - Require.Share(quantile, nameof(quantile)), degreesOfFreedom) / degreesOfFreedom));

    /// <summary>Chance of at least one false flag among unchanged athletes judged by independent errors: 1 − (1 − rate)ᵐ.</summary>
    /// <param name="athletes">Number of athletes, 0 or more.</param>
    /// <param name="rate">False-flag rate of one, 0 to 1.</param>
    public static double AtLeastOne(int athletes, double rate) => 1 - Math.Pow(1 - rate, Require.AtLeast(athletes, 0, nameof(athletes)));

    /// <summary>
    /// How many false flags chance alone gives among unchanged athletes: the central binomial range that holds the count with at least
    /// the stated probability. Independent errors are assumed; a typical error that is too small raises all counts together.
    /// </summary>
    /// <param name="athletes">Number of athletes, 0 or more.</param>
    /// <param name="rate">False-flag rate of one, 0 to 1.</param>
    /// <param name="level">Probability inside, above 0 and below 1.</param>
    public static ChanceCount ByChance(int athletes, double rate, double level = 0.95)
    {
        Require.AtLeast(athletes, 0, nameof(athletes));
        Require.Share(level, nameof(level));
        if (!(rate >= 0 && rate <= 1)) throw new ArgumentOutOfRangeException(nameof(rate), rate, FormattableString.Invariant($"rate is {rate}; allowed: 0 to 1."));
        int low = 0, high = 0;
        while (low < athletes && Binomial.CDF(rate, athletes, low) < (1 - level) / 2) low++;
        while (high < athletes && Binomial.CDF(rate, athletes, high) < (1 + level) / 2) high++;
        return new(athletes * rate, low, high, level);
    }

    /// <summary>
    /// P(|difference|/(√2 TE) exceeds a limit that depends on the estimated error), the estimate's chi-square law integrated out.
    /// </summary>
    /// <param name="trueChange">True change in typical errors.</param>
    /// <param name="limit">Limit in standard errors of the difference, as a function of estimated over true typical error.</param>
    /// <param name="df">Degrees of freedom; infinity when the error is known.</param>
    internal static double Beyond(double trueChange, Func<double, double> limit, double df)
    {
        var shift = Require.Finite(trueChange, nameof(trueChange)) / Math.Sqrt(2);
        double Given(double ratio) => NormalLaw.Cdf(shift - limit(ratio)) + NormalLaw.Cdf(-shift - limit(ratio));
        if (double.IsPositiveInfinity(Require.DegreesOfFreedom(df, nameof(df)))) return Given(1);

        // Simpson's rule on the chi-square's own scale; 4000 steps hold 9 digits even where the limit has a corner.
        const int Steps = 4000;
        var end = Math.Sqrt(ChiSquareLaw.Quantile(1 - 1e-13, df) / df);
        var constant = df / 2 * Math.Log(df / 2) - SpecialFunctions.GammaLn(df / 2) + Math.Log(2);
        double sum = 0;
        for (var i = 0; i <= Steps; i++)
        {
            var ratio = end * i / Steps;
            var density = ratio == 0 ? (df == 1 ? Math.Exp(constant) : 0) : Math.Exp(constant + (df - 1) * Math.Log(ratio) - df * ratio * ratio / 2);
            sum += (i is 0 or Steps ? 1 : i % 2 == 1 ? 4 : 2) * density * Given(ratio);
        }

        return sum * end / Steps / 3;
    }
}

/// <summary>Number of false flags chance alone would raise.</summary>
/// <param name="Expected">Expected number.</param>
/// <param name="Low">Least of the range.</param>
/// <param name="High">Most of the range.</param>
/// <param name="Level">Probability that the number falls in the range, at least.</param>
public sealed record ChanceCount(double Expected, int Low, int High, double Level);
