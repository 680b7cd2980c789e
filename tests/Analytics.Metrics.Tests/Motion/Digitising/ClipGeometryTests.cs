using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Digitising;

public class ClipGeometryTests
{
    private static readonly FrameClock Clock = FrameClock.FromRate(Frequency.FromHertz(240));

    private static readonly ClipGeometry Plain = new() { Scale = LengthScale.FromLength(Length.FromMetres(2), 0, 400, 1.5), PictureHeightPixels = 1080, PointSdPixels = 2 };

    private static readonly PixelTrack Hip = new("trochanter", MarkerRole.Hip, [100, 120, double.NaN, 160], [580, 580, double.NaN, 540]);

    [Fact]
    public void ToMetres_DownAndRight_FlipsYOnly()
    {
        var clip = Plain.ToMetres(Clock, [Hip], 30);
        var hip = clip[MarkerRole.Hip];
        Assert.Equal(new(0.5, 2.5), hip[0]!.Value.Rounded());
        Assert.Equal(new(0.8, 2.7), hip[3]!.Value.Rounded());
        Assert.Null(hip[2]);
        Assert.Equal(0.01, clip.PointSd!.Value.Metres, 1e-15);
        Assert.Equal(Math.Sqrt(2) * 1.5 / 400, clip.ScaleRelativeSd!.Value, 1e-15);
        Assert.Equal((30, 33), (clip.FirstFrame, clip.LastFrame));
    }

    [Fact]
    public void ToMetres_MirroredTravel_MovesForwardAllTheSame()
    {
        var mirrored = new PixelTrack("trochanter", MarkerRole.Hip, [1820, 1800, double.NaN, 1760], [580, 580, double.NaN, 540]);
        var right = Plain.ToMetres(Clock, [Hip])[MarkerRole.Hip];
        var left = (Plain with { Travel = Travel.Left }).ToMetres(Clock, [mirrored])[MarkerRole.Hip];
        Assert.Equal(right[3]!.Value.XMetres - right[0]!.Value.XMetres, left[3]!.Value.XMetres - left[0]!.Value.XMetres, 1e-12);
        Assert.Equal(right[3]!.Value.YMetres, left[3]!.Value.YMetres, 1e-12);
    }

    [Fact]
    public void ToMetres_YUp_KeepsY()
        => Assert.Equal(2.9, (Plain with { YAxis = YAxis.Up }).ToMetres(Clock, [Hip])[MarkerRole.Hip][0]!.Value.YMetres, 1e-12);

    // The athlete's 1 m looks 20/19 m long from 20 m when he runs 1 m nearer.
    [Fact]
    public void MetresPerPixel_LaneNearer_ShrinksByTheMagnification()
        => Assert.Equal(0.005 * 19 / 20, (Plain with { CameraDistance = Length.FromMetres(20), Nearer = Length.FromMetres(1) }).MetresPerPixel().Up, 1e-15);

    [Fact]
    public void MetresPerPixel_OffsetWithoutCameraDistance_AsksForIt()
        => Assert.Contains("distance of the camera", Assert.Throws<ArgumentException>(() => (Plain with { Nearer = Length.FromMetres(1) }).MetresPerPixel()).Message, StringComparison.Ordinal);

    [Fact]
    public void MetresPerPixel_CameraOffSquare_StretchesTheRunOnly()
    {
        var upright = (Plain with { CameraAngle = Angle.FromDegrees(10) }).MetresPerPixel();
        Assert.Equal(0.005 / 0.98480775, upright.Along, 1e-10);
        Assert.Equal(0.005, upright.Up, 1e-15);
        // A stick along the run was foreshortened itself: its length still comes out right, heights shrink.
        var along = (Plain with { Scale = LengthScale.FromLength(Length.FromMetres(2), 400, 0, 1.5), CameraAngle = Angle.FromDegrees(10) }).MetresPerPixel();
        Assert.Equal(2, 400 * along.Along, 1e-12);
        Assert.Equal(0.005 * 0.98480775, along.Up, 1e-10);
    }

    [Fact]
    public void ToMetres_CalibrationEnds_AreNotPartOfTheBody()
        => Assert.Equal([MarkerRole.Hip], Plain.ToMetres(Clock, [Hip, new("stick", MarkerRole.CalibrationFrom, [1, 1, 1, 1], [1, 1, 1, 1])]).Tracks.Select(t => t.Role));
}

file static class Rounding
{
    public static PlanePoint Rounded(this PlanePoint point) => new(Math.Round(point.XMetres, 12), Math.Round(point.YMetres, 12));
}
