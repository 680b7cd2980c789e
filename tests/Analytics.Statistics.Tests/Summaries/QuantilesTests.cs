using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Tests.Summaries;

public class QuantilesTests
{
    private static readonly double[] s_values = [12.1, 15.3, 9.8, 20.4, 17.7, 11.2, 14.9, 13.3, 18.6, 10.5];

    // R 4.2.2, quantile(x, p, type = 7).
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.1)]
    [InlineData(0.25)]
    [InlineData(0.333)]
    [InlineData(0.5)]
    [InlineData(0.75)]
    [InlineData(0.9)]
    [InlineData(0.95)]
    public void Type7_TenValues_AgreesWithR(double p)
        => Oracle.Close(Oracle.Value("quantile7", FormattableString.Invariant($"p{p}")), Quantiles.Type7(s_values, p), 1e-14);

    [Fact]
    public void Type7_Ends_AreExtremes()
    {
        Assert.Equal(9.8, Quantiles.Type7(s_values, 0));
        Assert.Equal(20.4, Quantiles.Type7(s_values, 1));
    }

    [Fact]
    public void Median_EvenCount_IsMeanOfMiddleTwo() => Oracle.Close(14.1, Quantiles.Median(s_values), 1e-14);

    [Fact]
    public void MedianAbsoluteDeviation_TenValues_AgreesWithR()
    {
        Oracle.Close(Oracle.Value("quantile7", "mad"), Quantiles.MedianAbsoluteDeviation(s_values), 1e-13);
        Oracle.Close(Oracle.Value("quantile7", "mad_constant"), Quantiles.NormalConsistency, 1e-14);
    }

    [Fact]
    public void Type7_ShareAboveOne_NamesRange()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Quantiles.Type7(s_values, 1.5));
        Assert.Equal("p", error.ParamName);
        Assert.Contains("p is 1.5; allowed: 0 to 1", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Type7_Empty_Throws() => Assert.Throws<ArgumentException>(() => Quantiles.Type7([], 0.5));

    [Fact]
    public void Summary_TenValues_HoldsAll()
    {
        var s = Summary.Of(s_values);
        Assert.Equal((10, 9.8, 20.4), (s.N, s.Minimum, s.Maximum));
        Oracle.Close(14.38, s.Mean, 1e-14);
        Oracle.Close(11.425, s.LowerQuartile, 1e-14);
        Oracle.Close(17.1, s.UpperQuartile, 1e-14);
    }

    [Fact]
    public void Summary_OneValue_HasNoSpread()
    {
        var s = Summary.Of([7]);
        Assert.Null(s.StandardDeviation);
        Assert.Equal((7, 7, 7), (s.Mean, s.Median, s.UpperQuartile));
    }
}
