using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Quantities;
using static Analytics.Metrics.Tests.Contact.Seen;

namespace Analytics.Metrics.Tests.Contact;

public class EventTimingTests
{
    [Fact]
    public void One_reading_without_judgement_has_the_error_of_the_frames()
    {
        var time = EventTiming.Of(Trial((100, 202)), JudgementError.None);
        Assert.Equal(0.425, time.Value.Seconds, 1e-12);
        Assert.Equal(1 / (240 * Math.Sqrt(6)), time.StandardError.Seconds, 1e-15);
        Assert.Equal(0.425 - (0.8001519461 / 240), time.Interval.Low, 1e-10);
        Assert.Equal(double.PositiveInfinity, time.DegreesOfFreedom);
    }

    [Fact]
    public void Assumed_judgement_is_added_in_quadrature_and_named()
    {
        var time = EventTiming.Of(Trial((100, 202)));
        Assert.Equal(Math.Sqrt((1 / (240.0 * 240 * 6)) + 1e-4 + 0.25e-4), time.StandardError.Seconds, 1e-12);
        Assert.Contains("assumed, common practice, no source", time.Estimate.Method, StringComparison.Ordinal);
        Assert.Contains("time to contact", time.ToString(), StringComparison.Ordinal);
    }

    // Deviations in frames: clip one ±1, clip two −4/3, −1/3, +5/3; sum of squares 2 + 42/9 over 1 + 2 df.
    [Fact]
    public void Judgement_is_pooled_over_the_repeats_of_a_day()
    {
        var pooled = JudgementError.OfRepeats([Trial((100, 200), (102, 200)), Trial((50, 150), (51, 150), (53, 150)), Trial((1, 100))]);
        Assert.Equal(Math.Sqrt((2 + (42.0 / 9)) / 3) / 240, pooled.FirstMovement.Sd.Seconds, 1e-12);
        Assert.Equal(3, pooled.FirstMovement.DegreesOfFreedom);
        Assert.Equal(0, pooled.Contact.Sd.Seconds, 1e-12);
    }

    [Fact]
    public void Without_repeats_judgement_is_assumed() => Assert.Same(JudgementError.Usual, JudgementError.OfRepeats([Trial((1, 100))]));

    // Two readings: judgement over √2, frames in full; Satterthwaite by hand.
    [Fact]
    public void Repeat_readings_lessen_judgement_only()
    {
        JudgementError judgement = new(new(Ms(8), 4, "test"), new(Ms(4), null, "test"));
        var time = EventTiming.Of(Trial((100, 202), (102, 204)), judgement);
        double frames = 1 / (240.0 * 240 * 6), first = 32e-6, contact = 8e-6, total = frames + first + contact;
        Assert.Equal(0.425, time.Value.Seconds, 1e-12);
        Assert.Equal(Math.Sqrt(total), time.StandardError.Seconds, 1e-12);
        Assert.Equal(total * total / (first * first / 4), time.DegreesOfFreedom, 1e-9);
        Assert.Equal(2, time.Readings);
    }

    // Contact is first seen after two dropped frames: it fell anywhere in 0.3 s, its middle lies 0.1 s before that of an even clip.
    [Fact]
    public void Time_stamps_give_each_event_its_own_frame_interval()
    {
        var time = EventTiming.Of(Trial(FrameClock.FromTimeStamps([0, 0.1, 0.2, 0.3, 0.6, 0.7]), (1, 4)), JudgementError.None);
        Assert.Equal(0.5 + ((0.1 - 0.3) / 2), time.Value.Seconds, 1e-12);
        Assert.Equal(Math.Sqrt((0.01 + 0.09) / 12), time.StandardError.Seconds, 1e-12);
    }

    [Fact]
    public void Rows_200_and_800_of_1080_shift_by_8_89_ms_at_16_ms_read_out()
    {
        var time = EventTiming.Of(Rolling(200, 800), JudgementError.None);
        Assert.Equal(8.888888889, time.RowShift.Milliseconds, 1e-9);
        Assert.Equal(425 + 8.888888889, time.Value.Milliseconds, 1e-9);
        Assert.Equal(0, time.RowDoubt.Seconds);
    }

    [Fact]
    public void Rows_not_noted_become_doubt()
    {
        Assert.Equal(16 / Math.Sqrt(6), EventTiming.Of(Rolling(null, null), JudgementError.None).RowDoubt.Milliseconds, 1e-9);
        var one = EventTiming.Of(Rolling(200, null), JudgementError.None);
        Assert.Equal(16 / Math.Sqrt(12), one.RowDoubt.Milliseconds, 1e-9);
        Assert.Equal(16 * (0.5 - (200.0 / 1080)), one.RowShift.Milliseconds, 1e-9);
    }

    // 20,000 events at random times and rows, seen at the first frame whose row comes after them.
    [Fact]
    public void Stated_errors_are_those_of_simulated_readings()
    {
        var random = new Random(5);
        double sum = 0, squares = 0, stated = 0;
        const int N = 20_000;
        for (var k = 0; k < N; k++)
        {
            double start = 1 + random.NextDouble(), length = 0.3 + (0.3 * random.NextDouble());
            var trial = Trial(Rate(60), (FirstSeen(start), FirstSeen(start + length))) with { Shutter = new(Ms(16), 1080) };
            var time = EventTiming.Of(trial, JudgementError.None);
            (sum, squares, stated) = (sum + time.Value.Seconds - length, squares + Math.Pow(time.Value.Seconds - length, 2), time.StandardError.Seconds);
        }
        Assert.Equal(0, sum / N, 3e-4);
        Assert.Equal(1, Math.Sqrt(squares / N) / stated, 0.02);

        int FirstSeen(double at) => (int)Math.Ceiling((at - (0.016 * random.NextDouble())) * 60);
    }

    [Fact]
    public void Readings_that_cannot_be_timed_are_refused_with_clip_and_reading()
        => Assert.Equal("clip 'a1-1', reading 2: contact at frame 90 comes before first movement at frame 100; check whether the two frames were swapped. (Parameter 'trial')",
            Assert.Throws<ArgumentException>(() => EventTiming.Of(Trial((100, 200), (100, 90)))).Message);

    [Fact]
    public void No_reading_is_said() => Assert.Equal("clip 'a1-1' has no reading; read the frames of first movement and contact", EventTiming.Fault(Trial()));

    private static Metrics.Trials.ContactTrial Rolling(double? first, double? contact)
        => Trial((100, 202)) with { Shutter = new(Ms(16), 1080), Readings = [new(1, new(100, first), new(202, contact))] };
}
