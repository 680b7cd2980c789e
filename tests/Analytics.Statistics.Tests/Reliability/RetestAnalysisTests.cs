using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

public class RetestAnalysisTests
{
    [Fact]
    public void Of_ThreeTrials_HoldsEveryPart()
    {
        var retest = RetestAnalysis.Of(ReliabilityTables.Of("retest3"));
        Oracle.Close(0.550992370720864, retest.Error.Value, 1e-12);
        Oracle.Close(0.9839760256164642, retest.Components!.Icc, 1e-10);
        Assert.Equal(2, retest.Pairs.Count);
        Assert.Empty(retest.Missing);
        var text = retest.ToString();
        foreach (var part in new[] { "typical error", "minimal detectable change", "coefficient of variation", "ICC(3,1)", "change, trial 2 to 3", "10 athletes" })
            Assert.Contains(part, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ValuesBelowZero_GivesTheRestAndNamesWhatIsMissing()
    {
        var retest = RetestAnalysis.Of(TrialTable.FromPairs([-1, 2, 3, 5], [-1.5, 2.5, 3.5, 4]));
        Assert.Null(retest.Variation);
        Assert.Contains("Error in per cent: A trial is -1; a percentage error needs values above 0.", retest.Missing);
    }

    [Fact]
    public void Of_PairNobodyDid_IsNamed()
    {
        var retest = RetestAnalysis.Of(TrialTable.FromRows([[1, 2, null], [3, 3.5, null], [5, 5.1, 6]]));
        Assert.Single(retest.Pairs);
        Assert.Contains(retest.Missing, m => m.StartsWith("Trials 2 and 3: 1 of 3 athletes", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_OneAthlete_Throws() => Assert.Throws<ArgumentException>(() => RetestAnalysis.Of(TrialTable.FromPairs([1], [2])));
}
