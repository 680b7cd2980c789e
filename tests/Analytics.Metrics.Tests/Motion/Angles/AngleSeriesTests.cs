using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Angles;

public class AngleSeriesTests
{
    [Fact]
    public void Series_Walk_AreTheTable()
    {
        var filtered = ClipSmoother.Smooth(Walking.Clip, new(Frequency.FromHertz(6))).Clip;
        var thigh = AngleSeries.FromForward(Walking.Clip, BodySegment.Thigh).Degrees;
        var shank = AngleSeries.FromForward(Walking.Clip, BodySegment.Shank).Degrees;
        var knee = AngleSeries.Knee(Walking.Clip).Degrees;
        var foot = AngleSeries.FromForward(Walking.Clip, BodySegment.Foot).Degrees;
        var trunk = AngleSeries.FromForward(Walking.Clip, BodySegment.LowerTrunk).Degrees;
        var lean = AngleSeries.Lean(Walking.Clip, BodySegment.Shank).Degrees;
        var (thighSmooth, shankSmooth) = (AngleSeries.FromForward(filtered, BodySegment.Thigh).Degrees, AngleSeries.FromForward(filtered, BodySegment.Shank).Degrees);
        foreach (var row in OracleTable.Read("motion/walking_angles.csv"))
        {
            var i = Walking.Clip.IndexOf((int)row["frame"]);
            // Eight decimals given.
            Assert.Equal(row["thigh_deg"], thigh[i]!.Value, 1e-8);
            Assert.Equal(row["leg_deg"], shank[i]!.Value, 1e-8);
            Assert.Equal(90 - row["leg_deg"], lean[i]!.Value, 1e-8);
            Assert.Equal(row["knee_deg"], knee[i]!.Value, 2e-8);
            Assert.Equal(row["foot_deg"], foot[i]!.Value, 1e-8);
            Assert.Equal(row["trunk_deg"], trunk[i]!.Value, 1e-8);
            Assert.Equal(row["thigh_filtered_deg"], thighSmooth[i]!.Value, 1e-8);
            Assert.Equal(row["leg_filtered_deg"], shankSmooth[i]!.Value, 1e-8);
        }
    }

    private static DigitisedClip Turning(int frames, double degreesPerFrame, double pointSd = 0.005) => new(FrameClock.FromRate(Frequency.FromHertz(120)),
    [
        new("knee", MarkerRole.Knee, [.. Enumerable.Range(0, frames).Select(i => 0.4 * Math.Cos(double.DegreesToRadians(degreesPerFrame * i)))], [.. Enumerable.Range(0, frames).Select(i => 0.4 * Math.Sin(double.DegreesToRadians(degreesPerFrame * i)))]),
        new("ankle", MarkerRole.Ankle, new double[frames], new double[frames]),
    ], 0, Length.FromMetres(pointSd));

    [Fact]
    public void FromForward_MoreThanATurn_RunsOn()
    {
        var series = AngleSeries.FromForward(Turning(100, 7), BodySegment.Shank);
        for (var i = 0; i < 100; i++) Assert.Equal(7 * i, series.Degrees[i]!.Value, 1e-9);
        Assert.Null(series.DegreesPerSecond[0]);
        Assert.Null(series.DegreesPerSecond[99]);
        Assert.Equal(840, series.DegreesPerSecond[50]!.Value, 1e-8);
        Assert.Equal(1.012855856, series.StandardErrorDegrees[3]!.Value, 1e-9);
    }

    [Fact]
    public void Series_GapInOneEnd_IsBlankThere()
    {
        var clip = Turning(5, 1);
        var knee = clip[MarkerRole.Knee];
        double[] x = [.. knee.XMetres.Select(v => v!.Value)], y = [.. knee.YMetres.Select(v => v!.Value)];
        (x[2], y[2]) = (double.NaN, double.NaN);
        var series = AngleSeries.Lean(clip.With([new("knee", MarkerRole.Knee, x, y), clip[MarkerRole.Ankle]]), BodySegment.Shank);
        Assert.Equal([false, false, true, false, false], series.Degrees.Select(d => d is null));
        Assert.All(series.DegreesPerSecond, Assert.Null);
    }

    // Filtering takes out error: the spread of filtered angles over simulated clips against the stated SD.
    [Fact]
    public void StandardError_AfterFiltering_IsThatOfSimulatedClips()
    {
        const int clips = 800;
        var (random, frames) = (new Random(7), 61);
        double sum = 0, squares = 0, stated = 0;
        for (var k = 0; k < clips; k++)
        {
            double[] Shaken(double at) => [.. Enumerable.Range(0, frames).Select(_ => at + (0.005 * Noise.Normal(random)))];
            var raw = new DigitisedClip(FrameClock.FromRate(Frequency.FromHertz(120)), [new("k", MarkerRole.Knee, Shaken(0.2), Shaken(0.4)), new("a", MarkerRole.Ankle, Shaken(0), Shaken(0))], 0, Length.FromMetres(0.005));
            var series = AngleSeries.Lean(ClipSmoother.Smooth(raw, new(Frequency.FromHertz(10))).Clip, BodySegment.Shank);
            var value = series.Degrees[30]!.Value;
            (sum, squares, stated) = (sum + value, squares + (value * value), stated + (series.StandardErrorDegrees[30]!.Value / clips));
        }
        var spread = Math.Sqrt((squares / clips) - (sum / clips * (sum / clips)));
        Assert.True(stated < 0.45 * 0.907);
        // 4 standard errors of an SD from 800 clips: 4/√1600 = 10 %.
        Assert.Equal(1, spread / stated, 0.1);
    }

    [Fact]
    public void Mirrored_Run_HasTheSameAngles()
    {
        var geometry = new ClipGeometry { Scale = LengthScale.FromLength(Length.FromMetres(1), 0, 100, 1) };
        double[] x = [100, 110, 120], y = [500, 480, 470], z = [90, 95, 130], w = [560, 555, 550];
        PixelTrack[] right = [new("k", MarkerRole.Knee, x, y), new("a", MarkerRole.Ankle, z, w)];
        PixelTrack[] left = [new("k", MarkerRole.Knee, [.. x.Select(v => 1920 - v)], y), new("a", MarkerRole.Ankle, [.. z.Select(v => 1920 - v)], w)];
        var clock = FrameClock.FromRate(Frequency.FromHertz(240));
        var a = AngleSeries.Lean(geometry.ToMetres(clock, right), BodySegment.Shank).Degrees;
        var b = AngleSeries.Lean((geometry with { Travel = Travel.Left }).ToMetres(clock, left), BodySegment.Shank).Degrees;
        for (var i = 0; i < 3; i++) Assert.Equal(a[i]!.Value, b[i]!.Value, 1e-9);
    }

    [Fact]
    public void Series_Bad_NameTheFrameOrTheLandmark()
    {
        var clip = new DigitisedClip(FrameClock.FromRate(Frequency.FromHertz(60)), [new("k", MarkerRole.Knee, [1, 2], [1, 2]), new("a", MarkerRole.Ankle, [0, 2], [0, 2])], 40);
        Assert.Contains("shank lean, frame 41: both ends", Assert.Throws<ArgumentException>(() => AngleSeries.Lean(clip, BodySegment.Shank)).Message, StringComparison.Ordinal);
        Assert.Contains("no marker for the far knee", Assert.Throws<KeyNotFoundException>(() => AngleSeries.Lean(clip, BodySegment.Shank.Far())).Message, StringComparison.Ordinal);
    }
}
