using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Smoothing;

public class ClipSmootherTests
{
    [Fact]
    public void Smooth_Walk_IsTheFilteredTable()
    {
        var smoothed = ClipSmoother.Smooth(Walking.Clip, new(Frequency.FromHertz(6)));
        Assert.Empty(smoothed.Notes);
        Assert.Equal(6, smoothed.Cutoffs[MarkerRole.Ankle].Hertz);
        var (expected, heel) = (Walking.Filtered("heel_x_cm"), smoothed.Clip[MarkerRole.Heel].XMetres);
        for (var i = 0; i < expected.Length; i++) Assert.Equal(expected[i], 100 * heel[i]!.Value, 1e-9);
    }

    [Fact]
    public void SmoothByResiduals_Walk_TakesTheHigherOfXAndY()
    {
        var smoothed = ClipSmoother.SmoothByResiduals(Walking.Clip, Frequency.FromHertz(6), ResidualSettings.Slow);
        Assert.Equal(7.20812581, smoothed.Cutoffs[MarkerRole.Ankle].Hertz, 1e-7);
    }

    [Fact]
    public void SmoothByResiduals_NoClearResult_FallsBackAndSaysSo()
    {
        var still = new DigitisedClip(FrameClock.FromRate(Frequency.FromHertz(120)), [new("hip", MarkerRole.Hip, new double[40], new double[40])]);
        var smoothed = ClipSmoother.SmoothByResiduals(still, Frequency.FromHertz(10));
        Assert.Equal(10, smoothed.Cutoffs[MarkerRole.Hip].Hertz);
        Assert.Contains("hip: filtered at 10 Hz, no cut-off by residuals (x: no straight tail", smoothed.Notes.Single(), StringComparison.Ordinal);
    }

    [Fact]
    public void Smooth_ShortPiece_IsLeftOutAndSaid()
    {
        double[] x = [.. Enumerable.Range(0, 40).Select(i => i is 5 or 30 ? double.NaN : (double)i)];
        var clip = new DigitisedClip(FrameClock.FromRate(Frequency.FromHertz(120)), [new("hip", MarkerRole.Hip, x, x)], 100);
        var smoothed = ClipSmoother.Smooth(clip, new(Frequency.FromHertz(10)));
        Assert.Equal([new(6, 24)], smoothed.Clip[MarkerRole.Hip].Pieces);
        Assert.Equal(["hip: 5 frames from frame 100 left out, the filter needs 10 without a gap", "hip: 9 frames from frame 131 left out, the filter needs 10 without a gap"], smoothed.Notes);
    }

    [Fact]
    public void Smooth_UnevenOrTwice_IsRefused()
    {
        double[] stamps = [.. Enumerable.Range(0, 60).Where(i => i != 20).Select(i => i / 60.0)];
        var uneven = new DigitisedClip(FrameClock.FromTimeStamps(stamps), [new("hip", MarkerRole.Hip, new double[59], new double[59])]);
        Assert.Contains("not even (60 Hz by 59 time stamps, 1 frames dropped", Assert.Throws<ArgumentException>(() => ClipSmoother.Smooth(uneven, new(Frequency.FromHertz(6)))).Message, StringComparison.Ordinal);
        var once = ClipSmoother.Smooth(Walking.Clip, new(Frequency.FromHertz(6))).Clip;
        Assert.Contains("filtered already", Assert.Throws<ArgumentException>(() => ClipSmoother.Smooth(once, new(Frequency.FromHertz(6)))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => ClipSmoother.SmoothByResiduals(Walking.Clip, Frequency.FromHertz(35)));
    }
}
