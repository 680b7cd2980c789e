using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Tests.Distributions;

public class LawsTests
{
    [Theory]
    [InlineData(0.975)]
    [InlineData(0.2)]
    public void StudentQuantile_InfiniteDegrees_IsNormal(double p)
        => Assert.Equal(NormalLaw.Quantile(p), StudentLaw.Quantile(p, double.PositiveInfinity));

    // 40-digit arithmetic.
    [Fact]
    public void StudentCdf_TenMillionDegrees_KeepsTheTail() => Oracle.Close(9.8662136668389176e-10, StudentLaw.Cdf(-6, 1e7), 1e-12);

    [Fact]
    public void StudentQuantile_Half_IsZero() => Assert.Equal(0, StudentLaw.Quantile(0.5, 7));

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void Quantile_ShareOutside_NamesRange(double p)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => StudentLaw.Quantile(p, 5));
        Assert.Equal("p", error.ParamName);
        Assert.Contains("above 0 and below 1", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void StudentCdf_NoDegrees_Throws()
        => Assert.Contains("infinity when the error is known", Assert.Throws<ArgumentOutOfRangeException>(() => StudentLaw.Cdf(1, 0)).Message, StringComparison.Ordinal);
}
