using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Tests.Distributions;

public class LawsTests
{
    // 40-digit arithmetic; quantiles are asked to 1e-11, distribution functions to 1e-10 or 1e-14 in the far tail.
    [Fact]
    public void Laws_EveryTabledValue_Agree()
    {
        var checkedRows = 0;
        foreach (var row in Oracle.Rows("distributions.csv"))
        {
            double x = Oracle.Number(row[4]), expected = Oracle.Number(row[5]);
            double df1 = row[2] == "" ? 0 : Oracle.Number(row[2]), df2 = row[3] == "" ? 0 : Oracle.Number(row[3]);
            var actual = (row[0], row[1]) switch
            {
                ("normal", "cdf") => NormalLaw.Cdf(x),
                ("normal", "quantile") => NormalLaw.Quantile(x),
                ("t", "cdf") => StudentLaw.Cdf(x, df1),
                ("t", "quantile") => StudentLaw.Quantile(x, df1),
                ("chisq", "cdf") => ChiSquareLaw.Cdf(x, df1),
                ("chisq", "quantile") => ChiSquareLaw.Quantile(x, df1),
                ("F", "cdf") => FisherLaw.Cdf(x, df1, df2),
                ("F", "quantile") => FisherLaw.Quantile(x, df1, df2),
                _ => throw new InvalidOperationException($"Unknown row {string.Join(',', row)}"),
            };
            var allowed = row[1] == "quantile" ? 1e-11 * Math.Abs(expected) : Math.Max(1e-10 * Math.Abs(expected), 1e-14);
            Assert.True(Math.Abs(actual - expected) <= allowed, $"{string.Join(',', row)} gave {actual:R}");
            checkedRows++;
        }

        Assert.Equal(381, checkedRows);
    }

    [Theory]
    [InlineData(0.975)]
    [InlineData(0.2)]
    public void StudentQuantile_InfiniteDegrees_IsNormal(double p)
        => Assert.Equal(NormalLaw.Quantile(p), StudentLaw.Quantile(p, double.PositiveInfinity));

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
