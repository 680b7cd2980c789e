using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Smoothing;

public class EvenGridTests
{
    private static double Path(double seconds) => (3 * seconds) + (0.3 * Math.Sin(9 * seconds));

    private static DigitisedClip Filmed(double[] stamps)
        => new(FrameClock.FromTimeStamps(stamps, 10), [new("hip", MarkerRole.Hip, [.. stamps.Select(Path)], [.. stamps.Select(t => -Path(t))])], 10, Length.FromMillimetres(3), 0.004);

    [Fact]
    public void Of_DroppedFrames_BecomeGapsThatCanBeFilled()
    {
        var clip = EvenGrid.Of(Filmed([.. Enumerable.Range(0, 60).Where(i => i is not (20 or 21)).Select(i => i / 60.0)]));
        Assert.False(clip.Clock.IsVariable);
        Assert.Equal(60, clip.Count);
        Assert.Equal([new(0, 20), new(22, 38)], clip[MarkerRole.Hip].Pieces);
        Assert.Equal((3, 0.004), (clip.PointSd!.Value.Millimetres, clip.ScaleRelativeSd!.Value));
        var whole = new GapFill(2).Apply(clip)[MarkerRole.Hip];
        for (var i = 0; i < 60; i++) Assert.Equal(Path(i / 60.0), whole[i]!.Value.XMetres, 1e-3);
    }

    [Fact]
    public void Of_StretchedSteps_AreInterpolated()
    {
        // The rate sags from 60 to 50 Hz half-way.
        var clip = EvenGrid.Of(Filmed([.. Enumerable.Range(0, 120).Select(i => i < 60 ? i / 60.0 : 1 + ((i - 60) / 50.0))]));
        Assert.False(clip.Clock.IsVariable);
        var start = clip.Clock.Time(10).Seconds;
        for (var i = 0; i < clip.Count; i++)
            if (clip[MarkerRole.Hip][i] is { } point) Assert.Equal(Path(start + (i * clip.Clock.Interval.Seconds)), point.XMetres, 1e-4);
        Assert.True(clip[MarkerRole.Hip].MissingCount <= 1);
    }

    [Fact]
    public void Of_EvenClip_IsUntouched() => Assert.Same(Walking.Clip, EvenGrid.Of(Walking.Clip));

    [Fact]
    public void Motion_UnevenClip_AsksForTheGrid()
        => Assert.Contains("EvenGrid", Assert.Throws<ArgumentException>(() => MarkerMotion.Of(Filmed([0, 0.1, 0.2, 0.4, 0.5]), MarkerRole.Hip)).Message, StringComparison.Ordinal);
}
