using Analytics.Statistics.Trends;

namespace Analytics.Statistics.Tests.Trends;

/// <summary>Series without trend whose values carry over: the plain test cries out at the rates printed, the corrected one far less.</summary>
public sealed class SerialCorrelationTests
{
    [Theory]
    [InlineData(0.0, 12, 0.04285, 0.045)]
    [InlineData(0.4, 20, 0.1657, 0.085)]
    [InlineData(0.6, 12, 0.2397, 0.125)]
    [InlineData(0.6, 40, 0.2976, 0.105)]
    public void False_trends_under_carry_over(double phi, int n, double plain, double atMost)
    {
        var gauss = new Gaussian(100 + n);
        const int runs = 2000;
        int flagged = 0, corrected = 0;
        for (var run = 0; run < runs; run++)
        {
            var test = MannKendall.Of(Series(gauss, phi, n));
            flagged += test.P < 0.05 ? 1 : 0;
            corrected += test.CorrectedP < 0.05 ? 1 : 0;
        }

        Assert.Equal(plain, flagged / (double)runs, 4 * Math.Sqrt(plain * (1 - plain) * (1.0 / runs + 1.0 / 20_000)));
        Assert.InRange(corrected / (double)runs, 0.01, atMost);
    }

    [Fact]
    public void A_true_trend_is_still_found()
    {
        var gauss = new Gaussian(4);
        var found = Enumerable.Range(0, 500).Count(_ => MannKendall.Of([.. Series(gauss, 0.3, 20).Select((v, i) => v + 0.25 * i)]).CorrectedP < 0.05);
        Assert.InRange(found, 400, 500);
    }

    [Fact]
    public void The_warning_quotes_the_measured_rate()
    {
        var cell = new SerialCorrelation((0.4 * 16 - 2) / 20, 20);
        Oracle.Close(0.4, cell.Corrected!.Value, 1e-12);
        Oracle.Close(0.1657, cell.FalseTrendRate!.Value, 1e-12);
        Oracle.Close(0.18445, cell.FalseTrendRateLeastSquares!.Value, 1e-12);
        Assert.Contains("about 17 %", cell.Remarks[0], StringComparison.Ordinal);
        Assert.Contains("more than 27 %", new SerialCorrelation(0.7, 20).Remarks[0], StringComparison.Ordinal);
        Assert.Empty(new SerialCorrelation(-0.1, 20).Remarks);
        Assert.Contains("too few", new SerialCorrelation(0.3, 6).Remarks[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Prints_the_warning()
    {
        double[] slow = [.. Enumerable.Range(0, 30).Select(i => Math.Sin(i / 5.0))];
        Assert.Contains("Successive values are alike", MannKendall.Of(slow).ToString(), StringComparison.Ordinal);
        Assert.Contains("Successive values are alike", TheilSen.Of(slow).ToString(), StringComparison.Ordinal);
    }

    private static double[] Series(Gaussian gauss, double phi, int n)
    {
        var y = new double[n];
        for (var i = 0; i < n; i++) y[i] = i == 0 ? gauss.Next() / Math.Sqrt(1 - phi * phi) : phi * y[i - 1] + gauss.Next();
        return y;
    }
}
