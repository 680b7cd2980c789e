namespace Analytics.Metrics.Tests;

/// <summary>Comparison with a figure that carries a known number of digits.</summary>
internal static class Close
{
    /// <summary>Agreement to six significant digits: half a unit in the sixth is at most 5e-6 of the value; doubled for the last rounding.</summary>
    public static void ToSixDigits(double expected, double actual, string what = "")
        => Assert.True(Math.Abs(actual - expected) <= 1e-5 * Math.Abs(expected), $"{what}: expected {expected:R}, got {actual:R}");
}
