using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

public class PooledChangeTests
{
    private static readonly TrialTable s_gaps = TrialTable.FromRows(
    [
        [52.1, 53.4, null], [47.3, null, 48.8], [61.0, 60.2, 62.9], [55.5, 56.1, 57.0], [null, 49.9, 50.3], [58.2, 59.9, 60.1], [44.7, 46.6, 45.9], [63.3, null, null],
    ]);

    // R 4.2.2: lm(y ~ trial + athlete) with and without relevel, confint.
    [Theory]
    [InlineData(0, 1, 0.9545454545454686, 0.06111054761084811, 1.847980361480089)]
    [InlineData(0, 2, 1.6090909090909145, 0.71565600215629377, 2.502525816025535)]
    [InlineData(1, 2, 0.6545454545454470, -0.2388894523891735, 1.5479803614800676)]
    public void Of_Gaps_AgreesWithLinearModelOfR(int first, int second, double change, double low, double high)
    {
        var pooled = PooledChange.Of(s_gaps, first, second);
        Oracle.Close(change, pooled.Change.Value, 1e-11);
        Oracle.Close(0.3949482032581125, pooled.Change.StandardError!.Value, 1e-11);
        Oracle.Close(low, pooled.Change.Interval!.Value.Low, 1e-11);
        Oracle.Close(high, pooled.Change.Interval!.Value.High, 1e-11);
        Assert.Equal(9, pooled.Error.DegreesOfFreedom);
    }

    [Fact]
    public void Of_CompleteTable_IsTheDifferenceOfMeansWithPooledError()
    {
        var table = ReliabilityTables.Of("retest3");
        var pooled = PooledChange.Of(table, 0, 2);
        Oracle.Close(TrialPair.Of(table, 0, 2).Change.Value, pooled.Change.Value, 1e-12);
        Oracle.Close(pooled.Error.Value * Math.Sqrt(2.0 / table.Athletes), pooled.Change.StandardError!.Value, 1e-12);
        Assert.Equal((table.Athletes - 1) * (table.Trials - 1), pooled.Error.DegreesOfFreedom);
    }

    [Fact]
    public void Of_TrialsNobodyLinks_SaysSo()
    {
        var table = TrialTable.FromRows([[1, 2, null, null], [2, 4, null, null], [null, null, 5, 7], [null, null, 6, 6]]);
        Assert.Contains("No athletes link trial 2 and trial 3", Assert.Throws<ArgumentException>(() => PooledChange.Of(table, 1, 2)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void RetestAnalysis_ThreeTrials_PrintsBoth()
    {
        var text = RetestAnalysis.Of(s_gaps).ToString();
        Assert.Contains("change, trial 1 to 2", text, StringComparison.Ordinal);
        Assert.Contains("change, trial 1 to 2, error of all trials", text, StringComparison.Ordinal);
    }
}
