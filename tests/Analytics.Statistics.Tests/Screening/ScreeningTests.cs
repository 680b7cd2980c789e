using Analytics.Statistics.Screening;
using Analytics.Statistics.Tests.Accuracy;
using Analytics.Statistics.Tests.Reliability;

namespace Analytics.Statistics.Tests.Screening;

public class ScreeningTests
{
    private static readonly double[] s_values = ScreeningAccuracy.TietjenMoore;

    // NIST/SEMATECH e-Handbook 1.3.5.17: G 2.4687, critical 2.032 (one side); R for the bound of p.
    [Fact]
    public void Grubbs_TietjenMoore_MatchesPrint()
    {
        var high = GrubbsTest.Of(s_values, OutlierSide.High);
        Assert.Equal(2.4687, high.G, 0.0001);
        Assert.Equal(2.032, high.Critical, 3);
        Assert.True(high.IsOutlier);
        Assert.Equal((7, 245.57), (high.Suspect.Index, high.Suspect.Value));
        Oracle.Close(PeerOracle.Value("grubbs", "p_one"), high.PBound, 1e-8);
        Oracle.Close(PeerOracle.Value("grubbs", "p_two"), GrubbsTest.Of(s_values).PBound, 1e-8);
        Assert.False(GrubbsTest.Of(s_values, OutlierSide.Low).IsOutlier);
    }

    // Printed tables: two-sided 1.715 (5), 2.290 (10); one-sided 2.110 (9), 2.176 (10). For 3 they print 1.155, the formula gives 1.1543.
    [Theory]
    [InlineData(5, OutlierSide.Both, 1.715)]
    [InlineData(10, OutlierSide.Both, 2.290)]
    [InlineData(9, OutlierSide.High, 2.110)]
    [InlineData(10, OutlierSide.High, 2.176)]
    public void Grubbs_CriticalValues_MatchPrintedTables(int n, OutlierSide side, double printed)
        => Assert.Equal(printed, GrubbsTest.CriticalValue(n, side), 3);

    // Rosner 1983: 3.118/3.158, 2.942/3.151, 3.179/3.143, 2.810/3.136 and three outliers; figures printed from memory, cut, not rounded.
    [Fact]
    public void Esd_Rosner_FindsThreeThoughTheFirstTwoDoNotPass()
    {
        var esd = GeneralisedEsd.Of(Oracle.Column("rosner-1983.csv", 1), 10);
        double[] r = [3.118, 2.942, 3.179, 2.810], bound = [3.158, 3.151, 3.143, 3.136];
        for (var i = 0; i < 4; i++)
        {
            Assert.Equal(r[i], esd.Steps[i].Suspect.Statistic, 0.001);
            Assert.Equal(bound[i], esd.Steps[i].Critical, 0.001);
        }

        Assert.True(esd.Steps[0].Suspect.Statistic < esd.Steps[0].Critical);
        Assert.Equal([6.01, 5.42, 5.34], esd.Outliers.Select(o => o.Value));
        Assert.Contains("Named values stay in the data", esd.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Esd_FewValues_SaysTheRateIsApproximate()
        => Assert.Contains("Below 25 values", GeneralisedEsd.Of(s_values, 2).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Esd_RestAllEqual_StopsEarly()
    {
        var esd = GeneralisedEsd.Of([1, 1, 1, 1, 1, 9], 3);
        Assert.Single(esd.Steps);
    }

    // Modified z 29.96 of 245.57 and −1.396 of 199.31.
    [Fact]
    public void ModifiedZ_TietjenMoore_NamesTheOne()
    {
        var screen = ModifiedZScreen.Of(s_values);
        Oracle.Close(29.9627135680, screen.Scores[7], 1e-4);
        Oracle.Close(-1.396452261, screen.Scores[0], 1e-4);
        Assert.Equal(7, Assert.Single(screen.Named).Index);
        Assert.Equal(s_values.Length, screen.Scores.Count);
    }

    [Fact]
    public void ModifiedZ_AllEqual_NamesNone()
    {
        var screen = ModifiedZScreen.Of([2, 2, 2, 2]);
        Assert.Empty(screen.Named);
        Assert.Contains("All values are equal", screen.ToString(), StringComparison.Ordinal);
    }

    // 4,000 seeded normal samples of 15: false alarms at most at the stated 5 % (standard error 0.34 %), and not far below.
    [Fact]
    public void Grubbs_NormalSamples_KeepTheStatedRate()
    {
        var normal = new Gaussian(9);
        var alarms = Enumerable.Range(0, 4000).Count(_ => GrubbsTest.Of([.. Enumerable.Range(0, 15).Select(_ => normal.Next())]).IsOutlier);
        Assert.InRange(alarms / 4000.0, 0.05 - 0.0104, 0.05 + 0.0104);
    }

    [Fact]
    public void Screens_ShiftAndScale_KeepStatistics()
    {
        double[] other = [.. s_values.Select(v => 3 * v - 40)];
        Oracle.Close(GrubbsTest.Of(s_values).G, GrubbsTest.Of(other).G, 1e-12);
        Oracle.Close(ModifiedZScreen.Of(s_values).Scores[2], ModifiedZScreen.Of(other).Scores[2], 1e-10);
        Oracle.Close(GeneralisedEsd.Of(s_values, 2).Steps[1].Suspect.Statistic, GeneralisedEsd.Of(other, 2).Steps[1].Suspect.Statistic, 1e-10);
    }

    [Fact]
    public void Grubbs_TwoValues_Throws()
        => Assert.Contains("2 values; at least 3", Assert.Throws<ArgumentException>(() => GrubbsTest.Of([1, 2])).Message, StringComparison.Ordinal);

    [Fact]
    public void Grubbs_AllEqual_Throws()
        => Assert.Contains("needs some spread", Assert.Throws<ArgumentException>(() => GrubbsTest.Of([1, 1, 1])).Message, StringComparison.Ordinal);

    [Fact]
    public void Esd_TooFewForSoMany_SaysHowManyAreNeeded()
        => Assert.Contains("8 values; at least 9", Assert.Throws<ArgumentException>(() => GeneralisedEsd.Of(s_values, 7)).Message, StringComparison.Ordinal);

    [Fact]
    public void ModifiedZ_NotANumber_NamesPlace()
        => Assert.Contains("values[1] is NaN", Assert.Throws<ArgumentException>(() => ModifiedZScreen.Of([1, double.NaN, 2])).Message, StringComparison.Ordinal);
}
