using System.Collections.Concurrent;
using Analytics.Statistics.Distributions;

namespace Analytics.Metrics.Sprinting.Fits;

/// <summary>The two-sided 95 % multiplier of Student's t, kept by degrees of freedom: a squad asks for the same few again and again.</summary>
internal static class StudentMultiplier
{
    private static readonly ConcurrentDictionary<int, double> Known = new();

    public static double Of(int degreesOfFreedom) => Known.GetOrAdd(degreesOfFreedom, df => StudentLaw.TwoSided(0.95, df));
}
