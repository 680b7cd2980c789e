using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

public class MeanSquaresTests
{
    // Printed in Shrout & Fleiss 1979, Table 2: 11.24, 6.26, 32.49, 1.02.
    [Fact]
    public void Of_ShroutFleiss_MatchesPrint()
    {
        var ms = MeanSquares.Of(ReliabilityTables.Of("shrout_fleiss"));
        Assert.Equal(11.24, ms.BetweenAthletes, 2);
        Assert.Equal(6.26, ms.WithinAthletes, 2);
        Assert.Equal(32.49, ms.BetweenTrials, 2);
        Assert.Equal(1.02, ms.Residual, 2);
    }

    [Theory]
    [MemberData(nameof(ReliabilityTables.Names), MemberType = typeof(ReliabilityTables))]
    public void Of_EveryTable_AgreesWithR(string name)
    {
        var ms = MeanSquares.Of(ReliabilityTables.Of(name));
        Oracle.Close(Oracle.Value(name, "BMS"), ms.BetweenAthletes);
        Oracle.Close(Oracle.Value(name, "JMS"), ms.BetweenTrials);
        Oracle.Close(Oracle.Value(name, "EMS"), ms.Residual);
        Oracle.Close(Oracle.Value(name, "WMS"), ms.WithinAthletes);
    }

    // By hand: both athletes average 2, the residuals are ±1: between 0, residual 4/1, so (0 − 4)/2.
    [Fact]
    public void TrueVariance_NoRealSpread_IsNegativeNotZero()
        => Assert.Equal(-2, MeanSquares.Of(TrialTable.FromPairs([1, 3], [3, 1])).TrueVariance, 12);

    [Fact]
    public void Sheet_TinyP_IsNotPrintedAsZero()
        => Assert.Contains("F 185.219, p < 0.0001", MeanSquares.Of(ReliabilityTables.Of("retest3")).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Sheet_NoRealSpread_SaysSo()
        => Assert.Contains("no between-athlete variance was found (estimate -2)", MeanSquares.Of(TrialTable.FromPairs([1, 3], [3, 1])).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Of_MissingTrial_SaysHowMany()
    {
        var error = Assert.Throws<ArgumentException>(() => MeanSquares.Of(TrialTable.FromPairs([1, 2, null], [1, 2, 3])));
        Assert.Contains("1 of 6 trials are missing", error.Message, StringComparison.Ordinal);
    }
}
