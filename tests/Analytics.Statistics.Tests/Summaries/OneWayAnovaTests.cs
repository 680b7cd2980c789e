using Analytics.Statistics.Summaries;
using Analytics.Statistics.Tests.Reliability;

namespace Analytics.Statistics.Tests.Summaries;

public class OneWayAnovaTests
{
    // Certified: F 1.18046237440255 [nist-strd]; p from R.
    [Fact]
    public void Of_SiRstv_IsCertified()
    {
        var anova = OneWayAnova.Of([.. Oracle.Rows("nist-sirstv.csv").GroupBy(r => r[0]).Select(g => (IReadOnlyList<double>)[.. g.Select(r => Oracle.Number(r[1]))])]);
        Oracle.Close(1.18046237440255, anova.F, 1e-12);
        Oracle.Close(PeerOracle.Value("sirstv", "p"), anova.P, 1e-11);
    }

    // By hand: groups 1 3 and 5: means 2 and 5, grand mean 3; between 2 × 1 + 1 × 4 = 6 on 1 df, within 2 on 1 df.
    [Fact]
    public void Of_UnequalGroups_MatchesHandValue()
    {
        var anova = OneWayAnova.Of([[1, 3], [5]]);
        Assert.Equal((6, 2, 1, 1), (anova.BetweenSquares, anova.WithinSquares, anova.DfBetween, anova.DfWithin));
        Assert.Contains("3 values in 2 groups", anova.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NoSpreadWithin_HasInfiniteFAndZeroP()
    {
        var anova = OneWayAnova.Of([[1, 1], [2, 2]]);
        Assert.Equal((double.PositiveInfinity, 0), (anova.F, anova.P));
    }

    [Fact]
    public void Of_OneGroup_Throws() => Assert.Contains("1 groups; at least 2", Message([[1, 2]]), StringComparison.Ordinal);

    [Fact]
    public void Of_NoRepeat_SaysWhatIsNeeded() => Assert.Contains("at least one group needs 2", Message([[1], [2]]), StringComparison.Ordinal);

    [Fact]
    public void Of_AllEqual_Throws() => Assert.Contains("All 4 values are equal", Message([[1, 1], [1, 1]]), StringComparison.Ordinal);

    [Fact]
    public void Of_NotANumber_NamesGroupAndPlace() => Assert.Contains("groups[1][0] is NaN", Message([[1, 1], [double.NaN, 1]]), StringComparison.Ordinal);

    private static string Message(IReadOnlyList<IReadOnlyList<double>> groups) => Assert.Throws<ArgumentException>(() => OneWayAnova.Of(groups)).Message;
}
