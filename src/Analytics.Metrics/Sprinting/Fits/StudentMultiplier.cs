using System.Collections.Concurrent;
using MathNet.Numerics.Distributions;

namespace Analytics.Metrics.Sprinting.Fits;

/// <summary>The two-sided 95 % multiplier of Student's t, kept by degrees of freedom: a squad asks for the same few again and again.</summary>
internal static class StudentMultiplier
{
    private static readonly ConcurrentDictionary<int, double> Known = new();

    public static double Of(int degreesOfFreedom) => Known.GetOrAdd(degreesOfFreedom, df => StudentT.InvCDF(0, 1, df, 0.975));
}
