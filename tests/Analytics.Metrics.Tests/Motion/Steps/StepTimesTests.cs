using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Steps;

public class StepTimesTests
{
    private static readonly FrameClock Clock = FrameClock.FromRate(Frequency.FromHertz(240));

    [Fact]
    public void Of_TwoSteps_AreCountedInFrames()
    {
        var steps = StepTimes.Of(Clock, [new(false, 100, 148), new(true, 160, 200), new(false, 220, null)]);
        Assert.Equal(0.2, steps[0].Contact!.Value.Value.Seconds, 1e-12);
        Assert.Equal(0.05, steps[0].Flight!.Value.Value.Seconds, 1e-12);
        Assert.Equal(0.25, steps[0].Step!.Value.Value.Seconds, 1e-12);
        Assert.Equal(4, steps[0].RateHertz!.Value, 1e-12);
        // SD of an interval at 240 frames a second by frames alone, 1/(240·√6) s.
        Assert.Equal(1.701034544e-3, steps[0].Contact!.Value.StandardError.Seconds, 1e-12);
        Assert.Equal(1.701034544e-3 / 0.0625, steps[0].RateStandardErrorHertz!.Value, 1e-10);
        Assert.True(steps[1].Far);
        Assert.Null(steps[2].Contact);
        Assert.Null(steps[2].Step);
    }

    [Theory]
    [InlineData(10, 10, 30, "toe-off at frame 10 must come after touchdown at frame 10")]
    [InlineData(10, 20, 9, "Step 2: touchdown at frame 9 must come after that of step 1")]
    [InlineData(10, 20, 15, "no double support")]
    public void Of_OutOfOrder_IsRefusedInWords(int touchdown, int off, int next, string words)
        => Assert.Contains(words, Assert.Throws<ArgumentException>(() => StepTimes.Of(Clock, [new(false, touchdown, off), new(true, next, null)])).Message, StringComparison.Ordinal);
}
