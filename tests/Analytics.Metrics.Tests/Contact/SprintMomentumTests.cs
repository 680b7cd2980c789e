using Analytics.Metrics.Contact;
using Analytics.Metrics.Sprinting.ForceVelocity;
using Analytics.Quantities;
using static Analytics.Metrics.Tests.Contact.Seen;

namespace Analytics.Metrics.Tests.Contact;

public class SprintMomentumTests
{
    // 100 kg, 10 m in 1.70 s by arithmetic; means of junior league forwards and backs (Kirkpatrick & Comfort 2013): momentum of the means.
    [Theory]
    [InlineData(100, 1.70, 588.2352941, 1e-6)]
    [InlineData(90.08, 2.06, 437.3, 0.05)]
    [InlineData(82.75, 1.99, 415.8, 0.05)]
    public void Mass_times_mean_speed(double kilograms, double seconds, double momentum, double within)
        => Assert.Equal(momentum, SprintMomentum.Of(Mass.FromKilograms(kilograms), Length.FromMetres(10), S(seconds)).KilogramMetresPerSecond, within);

    [Fact]
    public void A_time_of_0_is_refused()
        => Assert.Contains("time of the split must be above 0 s", Assert.Throws<ArgumentOutOfRangeException>(() => SprintMomentum.Of(Mass.FromKilograms(90), Length.FromMetres(10), S(0))).Message, StringComparison.Ordinal);

    // Women and men of a conference abstract of the group of [diprampero2005]: 4.75 and 5.77 m/s² with slopes printed as 25.9 and 30.5 degrees, 48.6 and 58.9 %.
    [Theory]
    [InlineData(4.75, 25.836256, 25.9, 48.6)]
    [InlineData(5.77, 30.462992, 30.5, 58.9)]
    public void Equivalent_slope(double acceleration, double degrees, double printedDegrees, double printedPercent)
    {
        var a = Acceleration.FromMetresPerSecondSquared(acceleration);
        Assert.Equal(degrees, EquivalentSlope.Of(a).Degrees, 5e-7);
        Assert.Equal(printedDegrees, EquivalentSlope.Of(a).Degrees, 0.1);
        Assert.Equal(printedPercent, 100 * EquivalentSlope.Gradient(a), 0.3);
    }

    // 9 m/s at 1/500 s.
    [Fact]
    public void Blur_is_speed_times_exposure()
    {
        var film = FrameQuantisation.At(Frequency.FromHertz(240));
        Assert.Equal(18, film.MotionBlur(Speed.FromMetresPerSecond(9), S(0.002)).Millimetres, 1e-9);
        Assert.Contains("cannot be longer than the frame", Assert.Throws<ArgumentOutOfRangeException>(() => film.MotionBlur(Speed.FromMetresPerSecond(9), S(0.01))).Message, StringComparison.Ordinal);
    }
}
