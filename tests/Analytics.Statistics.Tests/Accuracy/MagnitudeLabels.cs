using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>
/// How often magnitude-based labels credit a programme that does nothing, in closed form for a known standard error and the ratio of the smallest
/// worthwhile effect to it. The library offers no such labels; these figures stand in docs/methods/no-magnitude-labels.md.
/// </summary>
internal static class MagnitudeLabels
{
    /// <summary>"Use it": chance of harm under 0.5 %, of benefit above 25 %.</summary>
    public static double Clinical(double ratio) => 1 - NormalLaw.Cdf(Math.Max(Z(0.995) - ratio, ratio - Z(0.75)));

    /// <summary>"Likely" or more, either way.</summary>
    public static double Likely(double ratio) => 2 * (1 - NormalLaw.Cdf(Math.Max(ratio + Z(0.75), Z(0.95) - ratio)));

    /// <summary>"Possibly" or more, either way.</summary>
    public static double Possible(double ratio) => 2 * (1 - NormalLaw.Cdf(Math.Max(ratio - Z(0.75), Z(0.95) - ratio)));

    // Where the two conditions of a label ask the same the rate is largest.
    public static double WorstClinical => (Z(0.995) + Z(0.75)) / 2;

    public static double WorstLikely => (Z(0.95) - Z(0.75)) / 2;

    public static double WorstPossible => (Z(0.95) + Z(0.75)) / 2;

    /// <summary>Ratio for two groups of n and a worthwhile effect of 0.2 SD.</summary>
    public static double Ratio(int n) => 0.2 / Math.Sqrt(2.0 / n);

    private static double Z(double p) => NormalLaw.Quantile(p);
}
