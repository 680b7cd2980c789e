using Analytics.Metrics.Motion;

namespace Analytics.Metrics.Tests.Motion.Gaps;

public class JumpFinderTests
{
    // A limb at 120 frames a second with 3 mm of digitising error.
    private static MarkerTrack Limb(int seed, Func<int, double> extra)
    {
        var random = new Random(seed);
        double[] x = [.. Enumerable.Range(0, 200).Select(i => (8.0 * i / 120) + (0.4 * Math.Sin(2 * Math.PI * 2.2 * i / 120)) + (0.003 * Noise.Normal(random)) + extra(i))];
        double[] y = [.. Enumerable.Range(0, 200).Select(i => 0.3 + (0.2 * Math.Cos(2 * Math.PI * 2.2 * i / 120)) + (0.003 * Noise.Normal(random)))];
        return new("malleolus", MarkerRole.Ankle, x, y);
    }

    // A point at 6 m/s loses two frames at 60 Hz: it is 0.3 m further on, and the step is no jump when the stamps say so.
    [Fact]
    public void Find_DroppedFrames_AreNoJump()
    {
        double[] seconds = [.. Enumerable.Range(0, 40).Where(i => i is not (17 or 18)).Select(i => i / 60.0)];
        double[] x = [.. seconds.Select((s, i) => (6 * s) + (0.001 * (i % 3)))];
        DigitisedClip Clip(FrameClock clock) => new(clock, [new("m", MarkerRole.Hip, x, new double[x.Length])]);
        Assert.NotEmpty(new JumpFinder().Find(Clip(FrameClock.FromRate(Quantities.Frequency.FromHertz(60)))));
        Assert.Empty(new JumpFinder().Find(Clip(FrameClock.FromTimeStamps(seconds))));
    }

    [Fact]
    public void Find_CleanRuns_FindsNothing()
    {
        for (var seed = 0; seed < 100; seed++) Assert.Empty(new JumpFinder().Find(Limb(seed, _ => 0), 0));
    }

    [Theory]
    [InlineData(0.15)]
    [InlineData(-0.3)]
    public void Find_OneFrameOut_NamesItAndItsSize(double metres)
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var jump = new JumpFinder().Find(Limb(seed, i => i == 77 ? metres : 0), 1000).Single();
            Assert.Equal((1077, JumpKind.Spike), (jump.Frame, jump.Kind));
            Assert.Equal(Math.Abs(metres), jump.Size.Metres, 0.02);
            Assert.Contains("marker 'malleolus' (ankle) jumps", jump.ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Find_SwappedFromAFrameOn_NamesTheFirstAfter()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var jump = new JumpFinder().Find(Limb(seed, i => i >= 120 ? 0.4 : 0), 0).Single();
            Assert.Equal((120, JumpKind.Step), (jump.Frame, jump.Kind));
            Assert.Equal(0.4, jump.Size.Metres, 0.03);
        }
    }

    [Fact]
    public void Find_MarkerAtRest_FindsTheOneJump()
    {
        double[] x = [1, 1, 1, 1, 1.5, 1, 1, 1, 1, 1, 1, 1];
        Assert.Equal(4, new JumpFinder().Find(new("m", MarkerRole.Hip, x, new double[12]), 0).Single().Frame);
    }

    [Fact]
    public void Find_FactorTooSmall_IsRefused()
        => Assert.Contains("above 3; got 2", Assert.Throws<InvalidOperationException>(() => new JumpFinder(2).Find(Limb(0, _ => 0), 0)).Message, StringComparison.Ordinal);
}
