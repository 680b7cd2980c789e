using Analytics.Metrics.Contact;
using Analytics.Statistics.Distributions;
using static Analytics.Metrics.Tests.Contact.Seen;

namespace Analytics.Metrics.Tests.Contact;

public class WindowTests
{
    [Fact]
    public void Chances_come_from_the_error_of_the_time()
    {
        var time = EventTiming.Of(Trial((100, 202)));
        var odds = WindowOdds.Of(time);
        var tail = NormalLaw.Cdf(-0.025 / time.StandardError.Seconds);
        Assert.Equal(tail, odds.Before, 1e-9);
        Assert.Equal(tail, odds.After, 1e-9);
        Assert.Equal(1 - (2 * tail), odds.Inside, 1e-9);
    }

    [Fact]
    public void Few_repeats_widen_the_tails()
    {
        JudgementError known = new(new(Ms(10), null, "k"), new(Ms(5), null, "k")), two = new(new(Ms(10), 2, "e"), new(Ms(5), 2, "e"));
        Assert.True(WindowOdds.Of(EventTiming.Of(Trial((100, 202)), two)).Inside < WindowOdds.Of(EventTiming.Of(Trial((100, 202)), known)).Inside);
    }

    // Half the difference, 25 ms, is 0.800152/f: 25 frames a second have 32.006078 ms (frame_rates.csv), so 32.006078 are needed.
    [Fact]
    public void Frames_alone_tell_0_40_from_0_45_from_32_a_second_on()
    {
        var needed = FrameRateNeeded.ToTell(S(0.40), S(0.45), 0.95, JudgementError.None);
        Assert.Equal(32.006078, needed.Rate!.Value.Hertz, 1e-5);
        Assert.Equal(50, needed.UsualRate!.Value.Hertz);
    }

    // 25 ms/1.959964 = 12.7553366 ms; less 11.1803399 ms of judgement in quadrature 6.13992 ms; 1/(√6 · that) = 66.4908 Hz.
    [Fact]
    public void With_judgement_more_are_needed()
    {
        Assert.Equal(66.4908, FrameRateNeeded.ToTell(S(0.40), S(0.45)).Rate!.Value.Hertz, 0.001);
        Assert.Equal(100, FrameRateNeeded.ToTell(S(0.40), S(0.45)).UsualRate!.Value.Hertz);
    }

    [Fact]
    public void Too_much_judgement_is_said()
    {
        var needed = FrameRateNeeded.ToTell(S(0.40), S(0.41));
        Assert.Null(needed.Rate);
        Assert.Contains("no rate is enough", needed.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Equal_times_and_a_confidence_of_1_are_refused()
    {
        Assert.Contains("must differ", Assert.Throws<ArgumentOutOfRangeException>(() => FrameRateNeeded.ToTell(S(0.4), S(0.4))).Message, StringComparison.Ordinal);
        Assert.Contains("got 1.", Assert.Throws<ArgumentOutOfRangeException>(() => FrameRateNeeded.ToTell(S(0.4), S(0.5), 1)).Message, StringComparison.Ordinal);
    }
}
