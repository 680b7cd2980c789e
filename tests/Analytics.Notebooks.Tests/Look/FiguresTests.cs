using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Look;

public sealed class FiguresTests
{
    [Fact]
    public void SignedInterval_Change_ReadsAsTheHouseRuleSays()
        // The house rule: same decimals, U+2212, U+2009 before the unit.
        => Assert.Equal("+18\u2009kg (+9 to +27)", Figures.SignedInterval(18.2, new(9.4, 26.6), 0, "kg"));

    [Theory]
    [InlineData(-13.04, 1, "kg", "\u221213.0\u2009kg")]
    [InlineData(0.004, 2, "s", "0.00\u2009s")]
    [InlineData(-0.004, 2, "s", "0.00\u2009s")]
    [InlineData(7, 0, "", "+7")]
    public void Signed_Value_HasRealMinusAndNoSignAtZero(double value, int decimals, string unit, string expected)
        => Assert.Equal(expected, Figures.Signed(value, decimals, unit));

    [Theory]
    [InlineData(null)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Plain_NoNumber_ShowsTheMarkerWithoutUnit(double? value) => Assert.Equal("\u2013", Figures.Plain(value, 1, "kg"));

    [Fact]
    public void Plain_Negative_HasRealMinus() => Assert.Equal("\u22120.50", Figures.Plain(-0.5, 2));

    [Fact]
    public void Plain_Monster_IsShortEnoughToShow() => Assert.Equal("1e+308\u2009kg", Figures.Plain(1e308, 1, "kg"));

    [Fact]
    public void Interval_NoErrorKnown_ShowsTheNumberAlone() => Assert.Equal("182\u2009kg", Figures.Interval(182, null, 0, "kg"));

    [Fact]
    public void Limits_LowAndHigh_KeepTheSameDecimals() => Assert.Equal("(0.40 to 0.45)", Figures.Limits(0.4, 0.45, 2));

    [Fact]
    public void Percent_Share_IsWhole() => Assert.Equal("93\u2009%", Figures.Percent(0.934));

    [Fact]
    public void Plain_TooManyDecimals_NamesTheAllowedRange()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Figures.Plain(1, 10));
        Assert.Equal("decimals", error.ParamName);
        Assert.Contains("between 0 and 9", error.Message, StringComparison.Ordinal);
        Assert.Contains("10", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Plain_OtherCulture_StaysInvariant()
    {
        var before = Thread.CurrentThread.CurrentCulture;
        try
        {
            var comma = (System.Globalization.CultureInfo)System.Globalization.CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            comma.NumberFormat.NegativeSign = "~";
            Thread.CurrentThread.CurrentCulture = comma;
            Assert.Equal("\u22121.50\u2009s", Figures.Signed(-1.5, 2, "s"));
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }
}
