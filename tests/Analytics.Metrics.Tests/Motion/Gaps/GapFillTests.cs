using Analytics.Metrics.Motion;

namespace Analytics.Metrics.Tests.Motion.Gaps;

public class GapFillTests
{
    private static MarkerTrack Parabola(params int[] missing)
    {
        double[] x = [.. Enumerable.Range(0, 12).Select(i => missing.Contains(i) ? double.NaN : i * i * 0.01)], y = [.. x.Select(v => 2 * v)];
        return new("hip", MarkerRole.Hip, x, y);
    }

    [Fact]
    public void Apply_ShortGap_IsFilledAndMarked()
    {
        var track = new GapFill(2).Apply(Parabola(4, 5));
        Assert.Equal(0.16, track[4]!.Value.XMetres, 1e-12);
        Assert.Equal(0.50, track[5]!.Value.YMetres, 1e-12);
        Assert.Equal([4, 5], Enumerable.Range(0, 12).Where(track.IsFilled));
        Assert.Equal(2, track.FilledCount);
        Assert.Equal([new(0, 12)], track.Pieces);
    }

    [Fact]
    public void Apply_Linear_DrawsAStraightLine() => Assert.Equal((0.09 * 2 / 3) + (0.36 / 3), new GapFill(2, GapCurve.Linear).Apply(Parabola(4, 5))[4]!.Value.XMetres, 1e-12);

    [Fact]
    public void Apply_LongGapAndEnds_StayAndSplitTheTrack()
    {
        var track = new GapFill(2).Apply(Parabola(0, 4, 5, 6, 9, 11));
        Assert.Equal([new(1, 3), new(7, 4)], track.Pieces);
        Assert.Equal(1, track.FilledCount);
        Assert.Null(track[5]);
        Assert.Null(track[0]);
    }

    [Fact]
    public void Apply_OnePointOnASide_FallsBackToALine()
        => Assert.Equal((0.04 + 0.16) / 2, new GapFill(1).Apply(Parabola(0, 1, 3))[3]!.Value.XMetres, 1e-12);

    [Fact]
    public void Apply_Negative_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => new GapFill(-1).Apply(Parabola(4)));
}
