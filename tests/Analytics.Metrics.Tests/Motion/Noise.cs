namespace Analytics.Metrics.Tests.Motion;

/// <summary>Seeded normal numbers.</summary>
internal static class Noise
{
    public static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
