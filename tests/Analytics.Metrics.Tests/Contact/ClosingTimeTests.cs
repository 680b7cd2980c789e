using Analytics.Metrics.Contact;
using Analytics.Metrics.Sprinting.Curve;
using Analytics.Quantities;
using static Analytics.Metrics.Tests.Contact.Seen;

namespace Analytics.Metrics.Tests.Contact;

/// <summary>Figures from 50-digit arithmetic of the formulas.</summary>
public class ClosingTimeTests
{
    [Theory]
    [InlineData(10, 13.5, 0, 0.740740740741)]
    [InlineData(10, 6, 2, 1.35889894354)]
    [InlineData(10, 6, -1, 2.0)]
    [InlineData(5, 0, 4, 1.58113883008)]
    [InlineData(3, 9, -2, 0.346688068541)]
    public void Constant_acceleration_closes_the_gap(double gap, double closing, double acceleration, double seconds)
        => Assert.Equal(seconds, Close(gap, closing, acceleration).Time!.Value.Seconds, 1e-9);

    [Theory]
    [InlineData(10, 3, -1, "they stop closing before the gap of 10 m is gone")]
    [InlineData(10, -3, 0, "the gap of 10 m does not close")]
    [InlineData(10, 0, 0, "the gap of 10 m does not close")]
    public void No_contact_is_said(double gap, double closing, double acceleration, string words)
    {
        var none = Close(gap, closing, acceleration);
        Assert.Null(none.Time);
        Assert.StartsWith(words, none.WhyNot, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 1.19515531392, 13.3995329)]
    [InlineData(0.2, 1.28987093849, 13.36078695)]
    [InlineData(0.3, 1.33588654793, 13.31178093)]
    public void Two_standing_starts_meet(double delay, double seconds, double closing)
    {
        var met = ClosingTime.Facing(Length.FromMetres(10), Curve(8.8), Curve(8.2), S(delay));
        Assert.Equal(seconds, met.Time!.Value.Seconds, 1e-9);
        Assert.Equal(closing, met.ClosingSpeed!.Value.MetresPerSecond, 1e-7);
    }

    [Fact]
    public void A_gap_below_0_is_refused()
        => Assert.Contains("gap must be 0 m or more; got -1 m", Assert.Throws<ArgumentOutOfRangeException>(() => Close(-1, 3, 0)).Message, StringComparison.Ordinal);

    private static MonoExponential Curve(double topSpeed) => new(Speed.FromMetresPerSecond(topSpeed), S(0.77));

    private static ClosingTime Close(double gap, double closing, double acceleration)
        => ClosingTime.At(Length.FromMetres(gap), Speed.FromMetresPerSecond(closing), Acceleration.FromMetresPerSecondSquared(acceleration));
}
