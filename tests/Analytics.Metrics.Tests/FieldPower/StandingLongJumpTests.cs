using Analytics.Metrics.FieldPower;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.FieldPower;

public class StandingLongJumpTests
{
    [Fact]
    public void PerStature_TwoAndAHalfMetresAtOneEighty_IsAQuotientOfLengths()
        => Assert.Equal(1.388889, StandingLongJump.PerStature(Length.FromCentimetres(250), Length.FromMetres(1.80)), 1e-6); // 250 / 180, by hand

    [Fact]
    public void PerStature_Inches_GiveTheSame()
        => Assert.Equal(1.5, StandingLongJump.PerStature(Length.FromInches(108), Length.FromInches(72)), 1e-12); // 108 / 72, by hand

    [Fact]
    public void PerStature_NoStature_SaysSo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => StandingLongJump.PerStature(Length.FromMetres(2.5), Length.Zero));
        Assert.Equal("stature", error.ParamName);
        Assert.Contains("Stature must be above 0 m; got 0 m", error.Message, StringComparison.Ordinal);
    }
}
