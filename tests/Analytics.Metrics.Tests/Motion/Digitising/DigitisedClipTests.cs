using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Digitising;

public class DigitisedClipTests
{
    private static readonly FrameClock Clock = FrameClock.FromRate(Frequency.FromHertz(120));

    private static MarkerTrack Track(MarkerRole role, params double[] x) => new(role.InWords(), role, x, x);

    [Fact]
    public void Indexer_MissingLandmark_ListsThoseThere()
    {
        var clip = new DigitisedClip(Clock, [Track(MarkerRole.Hip, 1, 2), Track(MarkerRole.Knee, 1, 2)], 5);
        Assert.Contains("no marker for the ankle; it has: hip, knee", Assert.Throws<KeyNotFoundException>(() => clip[MarkerRole.Ankle]).Message, StringComparison.Ordinal);
        Assert.Null(clip.Find(MarkerRole.Ankle));
        Assert.Equal(1, clip.IndexOf(6));
        Assert.Contains("frames 5 to 6; got frame 7", Assert.Throws<ArgumentOutOfRangeException>(() => clip.IndexOf(7)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Constructor_BadTracks_AreRefusedInWords()
    {
        Assert.Contains("'knee' has 2 samples", Assert.Throws<ArgumentException>(() => new DigitisedClip(Clock, [Track(MarkerRole.Hip, 1), Track(MarkerRole.Knee, 1, 2)])).Message, StringComparison.Ordinal);
        Assert.Contains("both stand for the hip", Assert.Throws<ArgumentException>(() => new DigitisedClip(Clock, [Track(MarkerRole.Hip, 1), Track(MarkerRole.Hip, 1)])).Message, StringComparison.Ordinal);
        Assert.Contains("at least one marker", Assert.Throws<ArgumentException>(() => new DigitisedClip(Clock, [])).Message, StringComparison.Ordinal);
        Assert.Contains("3 time stamps", Assert.Throws<ArgumentException>(() => new DigitisedClip(FrameClock.FromTimeStamps([0, 1, 2]), [Track(MarkerRole.Hip, 1, 2, 3, 4)])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Track_Gaps_SplitItIntoPieces()
    {
        var track = Track(MarkerRole.Hip, double.NaN, 1, 2, double.NaN, double.NaN, 3);
        Assert.Equal([new(1, 2), new(5, 1)], track.Pieces);
        Assert.Equal(3, track.MissingCount);
        Assert.Equal([null, 1.0, 2.0, null, null, 3.0], track.XMetres);
        Assert.Null(track[0]);
        Assert.Equal(new PlanePoint(3, 3), track[5]);
    }

    [Theory]
    [InlineData(double.NaN, 1)]
    [InlineData(1, double.PositiveInfinity)]
    public void Track_HalfASample_IsRefusedWithItsPlace(double x, double y)
        => Assert.Contains("'m', sample 1", Assert.Throws<ArgumentException>(() => new MarkerTrack("m", MarkerRole.Hip, [0, x], [0, y])).Message, StringComparison.Ordinal);

    [Fact]
    public void Track_UnequalOrNone_IsRefused()
    {
        Assert.Contains("2 x and 1 y", Assert.Throws<ArgumentException>(() => new MarkerTrack("m", MarkerRole.Hip, [0, 1], [0])).Message, StringComparison.Ordinal);
        Assert.Contains("no samples", Assert.Throws<ArgumentException>(() => new PixelTrack("m", MarkerRole.Hip, [], [])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Roles_NearAndFar_MirrorEachOther()
    {
        foreach (var role in Enum.GetValues<MarkerRole>())
        {
            Assert.False(role.Near().IsFar());
            if (role.IsFar()) Assert.Equal(role, role.Near().Far());
        }
        Assert.Equal("far ankle", MarkerRole.Ankle.Far().InWords());
        Assert.Equal(MarkerRole.Neck, MarkerRole.Neck.Far());
        Assert.False(MarkerRole.CalibrationTo.IsBody());
    }
}
