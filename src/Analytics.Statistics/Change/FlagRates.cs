using Analytics.Statistics.Distributions;
using Analytics.Statistics.Multiplicity;
using MathNet.Numerics;

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
    public static double AtLeastOne(int athletes, double rate) => ChanceFlags.Of(athletes, rate).AtLeastOne;

    /// <summary>How many false flags chance alone gives among unchanged athletes; see <see cref="ChanceFlags"/>.</summary>
    /// <param name="athletes">Number of athletes, 0 or more.</param>
    /// <param name="rate">False-flag rate of one, 0 to 1.</param>
    /// <param name="level">Probability inside, above 0 and below 1.</param>
    public static ChanceFlags ByChance(int athletes, double rate, double level = 0.95) => ChanceFlags.Of(athletes, rate, level);

    /// <summary>False-flag rate of "the change exceeds c typical errors": 2 P(T ≤ −c/√2).</summary>
    /// <param name="multiple">Typical errors, 0 or more.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom of the typical error; infinity when known.</param>
    public static double ErrorMultiple(double multiple, double degreesOfFreedom)
        => 2 * StudentLaw.Cdf(-Require.NotNegative(multiple, nameof(multiple)) / Math.Sqrt(2), degreesOfFreedom);

    /// <summary>Share of reliability studies after which the normal multiplier flags unchanged athletes at more than a given rate.</summary>
    /// <param name="rate">False-flag rate, above 0 and below 1.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom of the typical error, finite.</param>
    /// <param name="level">Coverage meant, above 0 and below 1.</param>
    public static double StudiesAbove(double rate, double degreesOfFreedom, double level = 0.95)
        => ChiSquareLaw.Cdf(
            degreesOfFreedom * Math.Pow(NormalLaw.TwoSided(1 - Require.Share(rate, nameof(rate))) / NormalLaw.TwoSided(level), 2), degreesOfFreedom);

    /// <summary>
    /// Average false-flag rate when the normal multiplier is put on an upper limit of the typical error in place of its estimate: cautious, and
    /// not exact as Student's multiplier is.
    /// </summary>
    /// <param name="degreesOfFreedom">Degrees of freedom of the typical error, finite.</param>
    /// <param name="limit">One-sided coverage of the upper limit, above 0 and below 1.</param>
    /// <param name="level">Coverage meant, above 0 and below 1.</param>
    public static double UpperErrorLimit(double degreesOfFreedom, double limit = 0.8, double level = 0.95)
        => 2 * StudentLaw.Cdf(
            -NormalLaw.TwoSided(level) * Math.Sqrt(degreesOfFreedom / ChiSquareLaw.Quantile(1 - Require.Share(limit, nameof(limit)), degreesOfFreedom)),
            degreesOfFreedom);

    /// <summary>False-flag rate of "outside mean ± k SD of the athlete's own tests": 2 P(T ≤ −k/√(1 + 1/m)), m − 1 degrees of freedom; 9 % for k = 2 and m = 10.</summary>
    /// <param name="spreads">k, 0 or more.</param>
    /// <param name="tests">Baseline tests m, at least 2.</param>
    public static double OwnBaseline(double spreads, int tests)
        => 2 * StudentLaw.Cdf(
            -Require.NotNegative(spreads, nameof(spreads)) / Math.Sqrt(1 + 1.0 / Require.AtLeast(tests, 2, nameof(tests))), tests - 1);

    /// <summary>False-flag rate of "outside mean ± z SD √(1 + 1/m)" of the athlete's own tests, the normal multiplier where Student's belongs.</summary>
    /// <param name="multiplier">z, 0 or more.</param>
    /// <param name="tests">Baseline tests m, at least 2.</param>
    public static double OwnBaselinePrediction(double multiplier, int tests)
        => 2 * StudentLaw.Cdf(-Require.NotNegative(multiplier, nameof(multiplier)), Require.AtLeast(tests, 2, nameof(tests)) - 1);

    /// <summary>
    /// Rate of "the probability of a change above the smallest worthwhile one exceeds c", flat prior and known error:
    /// 1 − Φ((SWC − δ)/(√2 TE) + Φ⁻¹(c)). One direction; an athlete who changed by just the worthwhile amount is flagged at the rate 1 − c.
    /// </summary>
    /// <param name="trueChange">True change in typical errors.</param>
    /// <param name="worthwhile">Smallest worthwhile change in typical errors, 0 or more.</param>
    /// <param name="certainty">c, above 0 and below 1.</param>
    public static double ProbabilityAbove(double trueChange, double worthwhile, double certainty)
        => NormalLaw.Cdf(
            (Require.Finite(trueChange, nameof(trueChange)) - Require.NotNegative(worthwhile, nameof(worthwhile))) / Math.Sqrt(2) - NormalLaw.Quantile(certainty));

    /// <summary>
    /// Reliability a test needs so that its detectable change z √2 TE is no larger than a share of the observed SD between athletes:
    /// 1 − (share/(z √2))². For 0.2 SD it is 0.995.
    /// </summary>
    /// <param name="share">Share of the SD, above 0.</param>
    /// <param name="level">Coverage of the detectable change, above 0 and below 1.</param>
    public static double ReliabilityNeeded(double share = 0.2, double level = 0.95)
        => 1 - Math.Pow(Require.Positive(share, nameof(share)) / (NormalLaw.TwoSided(level) * Math.Sqrt(2)), 2);

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
