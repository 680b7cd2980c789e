using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Timing;

public class FrameClockTests
{
    // n·1000/1001 is the definition of the broadcast rates; common practice, no source.
    [Theory]
    [InlineData(23.976, 24000.0 / 1001)]
    [InlineData(23.98, 24000.0 / 1001)]
    [InlineData(29.97, 30000.0 / 1001)]
    [InlineData(59.94, 60000.0 / 1001)]
    [InlineData(119.88, 120000.0 / 1001)]
    [InlineData(239.76, 240000.0 / 1001)]
    [InlineData(240, 240)]
    [InlineData(69.9, 69.9)]
    public void FromRate_NominalRate_IsMadeExact(double printed, double exact)
        => Assert.Equal(exact, FrameClock.FromRate(Frequency.FromHertz(printed)).Rate.Hertz, 1e-10);

    [Fact]
    public void FromRate_ReadAs30_Shortens4500MsBy4495504Microseconds()
    {
        var (nominal, whole) = (FrameClock.FromRate(Frequency.FromHertz(29.97)), FrameClock.FromRate(Frequency.FromHertz(30)));
        var frames = 4.5 / nominal.Interval.Seconds;
        Assert.Equal(0.004495504, (frames * nominal.Interval.Seconds) - (frames * whole.Interval.Seconds), 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(200_000)]
    public void FromRate_Implausible_IsRefusedWithTheRange(double hertz)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => FrameClock.FromRate(Frequency.FromHertz(hertz)));
        Assert.Contains("between 1 and 100,000 Hz", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Time_EvenRate_CountsFromFrame0AndHasNoEnd()
    {
        var clock = FrameClock.FromRate(Frequency.FromHertz(240));
        Assert.Equal(0.5, clock.Time(120).Seconds, 1e-15);
        Assert.Equal(-0.25, clock.Between(120, 60).Seconds, 1e-15);
        Assert.Equal(120, clock.FrameNearest(Duration.FromSeconds(0.501)));
        Assert.Null(clock.FrameCount);
        Assert.False(clock.IsVariable);
        Assert.Contains("no time stamps", clock.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void FromTimeStamps_RoundedToMilliseconds_AreEvenAndGiveTheRate()
    {
        double[] stamps = [.. Enumerable.Range(0, 480).Select(i => Math.Round(i / 240.0, 3))];
        var clock = FrameClock.FromTimeStamps(stamps, 10);
        Assert.False(clock.IsVariable);
        Assert.Equal(240, clock.Rate.Hertz, 0.01);
        Assert.Equal(10, clock.FirstFrame);
        Assert.Equal(0.004, clock.Time(11).Seconds, 1e-15);
    }

    [Fact]
    public void FromTimeStamps_TwoFramesMissing_AreFoundWithTheirPlace()
    {
        double[] stamps = [.. Enumerable.Range(0, 60).Where(i => i is not (20 or 21 or 40)).Select(i => i / 60.0)];
        var clock = FrameClock.FromTimeStamps(stamps);
        Assert.True(clock.IsVariable);
        Assert.Equal([(19, 2), (37, 1)], clock.Dropped.Select(d => (d.AfterFrame, d.Count)));
        Assert.Equal(3 / 60.0, clock.Dropped[0].Hole.Seconds, 1e-12);
        Assert.Equal(60, clock.Rate.Hertz, 1e-9);
        Assert.Equal(3 / 60.0, clock.IntervalAt(20).Seconds, 1e-12);
        Assert.Contains("3 frames dropped, first after frame 19", clock.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void FromTimeStamps_RateThatFalls_IsVariable()
    {
        double[] stamps = [.. Enumerable.Range(0, 120).Select(i => i < 60 ? i / 60.0 : 1 + ((i - 60) / 50.0))];
        var clock = FrameClock.FromTimeStamps(stamps);
        Assert.True(clock.IsVariable);
        Assert.Empty(clock.Dropped);
        Assert.Contains("variable", clock.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void FromTimeStamps_Standing_NamesTheFrame()
    {
        var error = Assert.Throws<ArgumentException>(() => FrameClock.FromTimeStamps([0, 0.1, 0.1, 0.2], 7));
        Assert.Contains("frame 9 is 0.1 s", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void FromTimeStamps_NotFinite_NamesTheFrame(double bad)
        => Assert.Contains("frame 1 ", Assert.Throws<ArgumentException>(() => FrameClock.FromTimeStamps([0, bad, 1])).Message, StringComparison.Ordinal);

    [Fact]
    public void Time_OutsideTheStamps_SaysWhichThereAre()
    {
        var clock = FrameClock.FromTimeStamps([0, 0.1, 0.2], 5);
        Assert.Contains("frames 5 to 7; got frame 8", Assert.Throws<ArgumentOutOfRangeException>(() => clock.Time(8)).Message, StringComparison.Ordinal);
        Assert.Equal(7, clock.FrameNearest(Duration.FromSeconds(9)));
        Assert.Equal(5, clock.FrameNearest(Duration.FromSeconds(-1)));
        Assert.Equal(6, clock.FrameNearest(Duration.FromSeconds(0.12)));
    }
}
