using Analytics.Statistics.Summaries;
using Analytics.Statistics.Tests.Accuracy;
using Analytics.Statistics.Tests.Reliability;

namespace Analytics.Statistics.Tests.Summaries;

public class RobustTests
{
    // Tietjen and Moore's values as used by NIST 1.3.5.17: median 201.37, MAD 0.995.
    [Fact]
    public void RobustSummary_TietjenMoore_MatchesPrint()
    {
        var robust = RobustSummary.Of(ScreeningAccuracy.TietjenMoore);
        Oracle.Close(201.37, robust.Median, 1e-14);
        Oracle.Close(0.995 * 1.4826022185056018, robust.Spread!.Value, 1e-12);
    }

    // Eight values: R 1 − 2 pbinom(0, 8, .5); twenty: 1 − 2 pbinom(5, 20, .5), the 6th from both ends.
    [Fact]
    public void MedianInterval_OrderStatistics_StatesTheCoverageReached()
    {
        var eight = RobustSummary.Of(ScreeningAccuracy.TietjenMoore).MedianInterval!.Value;
        Assert.Equal((199.31, 245.57), (eight.Low, eight.High));
        Oracle.Close(PeerOracle.Value("median_interval", "level8"), eight.Level, 1e-13);
        var twenty = RobustSummary.Of([.. Enumerable.Range(1, 20).Select(i => (double)i)]).MedianInterval!.Value;
        Assert.Equal((6, 15), (twenty.Low, twenty.High));
        Oracle.Close(PeerOracle.Value("median_interval", "level20"), twenty.Level, 1e-13);
    }

    [Fact]
    public void MedianInterval_FiveValues_DoesNotExist()
    {
        var robust = RobustSummary.Of([1, 2, 3, 4, 5]);
        Assert.Null(robust.MedianInterval);
        Assert.Contains("too few values for an interval", robust.ToString(), StringComparison.Ordinal);
    }

    // By hand: median 5, distances 0 0 0 0 4, mean 0.8.
    [Fact]
    public void RobustSummary_MostValuesEqual_FallsBackAndSaysSo()
    {
        var robust = RobustSummary.Of([5, 5, 5, 5, 9]);
        Assert.Equal(SpreadSource.MeanAbsoluteDeviation, robust.Source);
        Oracle.Close(0.8 * 1.2533141373155003, robust.Spread!.Value, 1e-14);
        Assert.Contains("more than half of the values are equal", robust.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void RobustSummary_AllEqual_HasNoSpread()
    {
        var robust = RobustSummary.Of([3, 3, 3]);
        Assert.Equal((null, SpreadSource.None), (robust.Spread, robust.Source));
    }

    [Fact]
    public void HuberMean_OneWildValue_PullsItInAndKeepsItCounted()
    {
        var huber = HuberMean.Of(ScreeningAccuracy.TietjenMoore);
        Assert.Equal((1, 8), (huber.PulledIn, huber.Centre.N));
        Assert.Equal(201.16, huber.Centre.Value, 2);
    }

    // Nothing pulled in: the mean, with the error of a mean.
    [Fact]
    public void HuberMean_NothingFarOut_IsTheMean()
    {
        double[] y = [1, 2, 3, 4, 5];
        var (huber, mean) = (HuberMean.Of(y, 5).Centre, MeanEstimate.Of(y));
        Oracle.Close(mean.Value, huber.Value, 1e-12);
        Oracle.Close(mean.StandardError!.Value, huber.StandardError!.Value, 1e-12);
    }

    // 5,000 seeded normal samples of 20: the approximate error matches the spread of the estimates to 5 %.
    [Fact]
    public void HuberMean_Error_MatchesSimulation()
    {
        var normal = new Gaussian(12);
        List<double> centres = [], variances = [];
        for (var i = 0; i < 5000; i++)
        {
            var huber = HuberMean.Of([.. Enumerable.Range(0, 20).Select(_ => normal.Next())]).Centre;
            centres.Add(huber.Value);
            variances.Add(huber.StandardError!.Value * huber.StandardError!.Value);
        }

        Assert.Equal(1, Math.Sqrt(Moments.Mean(variances) / Moments.Variance(centres)), 0.05);
    }

    [Fact]
    public void HuberMean_AllEqual_Throws()
        => Assert.Contains("All 3 values are equal", Assert.Throws<ArgumentException>(() => HuberMean.Of([2, 2, 2])).Message, StringComparison.Ordinal);
}
