using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Angles;

/// <summary>Expected figures by independent 50-digit arithmetic and the published walk (tests/oracles/motion/README.md).</summary>
public class SegmentAngleTests
{
    [Theory]
    [InlineData(0.30, 0.50, 0.00, 0.10, 53.1301023542, 36.8698976458)]
    [InlineData(1.234, 0.456, 1.012, 0.083, 59.2399810587, 30.7600189413)]
    [InlineData(0.00, 0.50, 0.10, 0.10, 104.036243468, -14.0362434679)]
    public void Of_Points_AreTheTable(double px, double py, double dx, double dy, double fromForward, double lean)
    {
        var angle = SegmentAngle.Of(new(px, py), new(dx, dy));
        Assert.Equal(fromForward, angle.FromForward.Degrees, 1e-9);
        Assert.Equal(lean, angle.Lean.Degrees, 1e-9);
        Assert.Null(angle.StandardError);
    }

    [Theory]
    [InlineData(0.25, 1.620569369)]
    [InlineData(0.40, 1.012855856)]
    [InlineData(0.43, 0.9421914937)]
    [InlineData(0.50, 0.8102846845)]
    public void StandardError_FiveMillimetres_IsTheTable(double metres, double degrees)
        => Assert.Equal(degrees, SegmentAngle.Of(new(0, metres), new(0, 0), Length.FromMillimetres(5)).StandardError!.Value.Degrees, 1e-9);

    // An outside simulation of 2,000,000 draws gave 0.94257°.
    [Fact]
    public void StandardError_Simulated_Agrees()
    {
        var (random, s) = (new Random(1), 0.005);
        var sd = Spread(40_000, () => SegmentAngle.Of(new(Noise.Normal(random) * s, 0.43 + (Noise.Normal(random) * s)), new(Noise.Normal(random) * s, Noise.Normal(random) * s)).Lean.Degrees);
        Assert.Equal(0.94257, sd, 4 * 0.94257 / Math.Sqrt(80_000));
    }

    [Fact]
    public void Knee_WithSharedPoint_HasTheTablesErrorAndTheSimulations()
    {
        // Included angle 120°: flexion 60°.
        PlanePoint knee = new(0, 0), hip = new(0, 0.43), ankle = new(-0.42 * Math.Sin(Math.PI / 3), -0.42 * Math.Cos(Math.PI / 3));
        var angle = JointAngle.Knee(hip, knee, ankle, Length.FromMillimetres(5));
        Assert.Equal(60, angle.Value.Degrees, 1e-9);
        Assert.Equal(1.507533096, angle.StandardError!.Value.Degrees, 1e-9);
        var random = new Random(2);
        PlanePoint Shaken(PlanePoint p) => new(p.XMetres + (0.005 * Noise.Normal(random)), p.YMetres + (0.005 * Noise.Normal(random)));
        var sd = Spread(40_000, () => JointAngle.Knee(Shaken(hip), Shaken(knee), Shaken(ankle)).Value.Degrees);
        // An outside simulation of 2,000,000 draws gave 1.50852°.
        Assert.Equal(1.50852, sd, 4 * 1.50852 / Math.Sqrt(80_000));
    }

    [Fact]
    public void HipAndAnkle_Simulated_HaveTheStatedError()
    {
        var random = new Random(3);
        PlanePoint Shaken(double x, double y) => new(x + (0.005 * Noise.Normal(random)), y + (0.005 * Noise.Normal(random)));
        var hip = JointAngle.Hip(new(0.3, 0.5), new(0, 0), new(0.2, -0.35), Length.FromMillimetres(5)).StandardError!.Value.Degrees;
        Assert.Equal(1, Spread(40_000, () => JointAngle.Hip(Shaken(0.3, 0.5), Shaken(0, 0), Shaken(0.2, -0.35)).Value.Degrees) / hip, 0.015);
        var ankle = JointAngle.Ankle(new(0.1, 0.4), new(0, 0), new(-0.06, -0.05), new(0.18, -0.06), Length.FromMillimetres(5)).StandardError!.Value.Degrees;
        Assert.Equal(1, Spread(40_000, () => JointAngle.Ankle(Shaken(0.1, 0.4), Shaken(0, 0), Shaken(-0.06, -0.05), Shaken(0.18, -0.06)).Value.Degrees) / ankle, 0.015);
    }

    [Fact]
    public void Ankle_RightAngle_IsZeroAndToesUpPositive()
    {
        Assert.Equal(0, JointAngle.Ankle(new(0, 0.4), new(0, 0), new(-0.05, -0.05), new(0.2, -0.05)).Value.Degrees, 1e-9);
        Assert.True(JointAngle.Ankle(new(0, 0.4), new(0, 0), new(-0.05, -0.05), new(0.2, 0.05)).Value.Degrees > 0);
        // Thigh lifted forward of an upright trunk.
        Assert.Equal(45, JointAngle.Hip(new(0, 0.5), new(0, 0), new(0.3, -0.3)).Value.Degrees, 1e-9);
    }

    [Fact]
    public void Of_NoLengthOrNotFinite_IsRefusedInWords()
    {
        Assert.Contains("(1, 2) m; a segment of no length", Assert.Throws<ArgumentException>(() => SegmentAngle.Of(new(1, 2), new(1, 2))).Message, StringComparison.Ordinal);
        Assert.Contains("proximal end is (NaN, 2)", Assert.Throws<ArgumentException>(() => SegmentAngle.Of(new(double.NaN, 2), new(1, 2))).Message, StringComparison.Ordinal);
        Assert.Contains("distal end is", Assert.Throws<ArgumentException>(() => SegmentAngle.Of(new(1, 2), new(1, double.NegativeInfinity))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => SegmentAngle.Of(new(1, 2), new(1, 3), Length.FromMetres(-1)));
    }

    private static double Spread(int draws, Func<double> draw)
    {
        double[] values = [.. Enumerable.Range(0, draws).Select(_ => draw())];
        var mean = values.Average();
        return Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (draws - 1));
    }
}
