using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

public class TrialTableTests
{
    [Fact]
    public void FromRows_Gaps_AreCountedNotLost()
    {
        var table = TrialTable.FromRows([[1, null], [null, null], [3, 4]]);
        Assert.Equal((3, 2, 3, false), (table.Athletes, table.Trials, table.Observations, table.IsComplete));
        Assert.Equal([1.0], table.Differences(0, 1));
        Assert.Equal(1, table.CompleteRows()!.Athletes);
    }

    [Fact]
    public void CompleteRows_None_IsNull() => Assert.Null(TrialTable.FromPairs([1, null], [null, 2]).CompleteRows());

    [Fact]
    public void FromRows_UnequalLengths_NamesRow()
        => Assert.Contains("Row 1 has 3 trials where row 0 has 2", Assert.Throws<ArgumentException>(() => TrialTable.FromRows([[1, 2], [1, 2, 3]])).Message, StringComparison.Ordinal);

    [Fact]
    public void FromRows_NotANumber_NamesCell()
        => Assert.Contains("Row 0, trial 1 is NaN; write null", Assert.Throws<ArgumentException>(() => TrialTable.FromRows([[1, double.NaN]])).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void FromRows_Infinite_NamesCell(double bad)
        => Assert.Contains("Row 1, trial 0 is", Assert.Throws<ArgumentException>(() => TrialTable.FromRows([[1, 2], [bad, 1]])).Message, StringComparison.Ordinal);

    [Fact]
    public void FromRows_Empty_Throws() => Assert.Throws<ArgumentException>(() => TrialTable.FromRows([]));

    [Fact]
    public void FromRows_OneTrial_Throws()
        => Assert.Contains("1 trial columns; at least 2", Assert.Throws<ArgumentException>(() => TrialTable.FromRows([[1]])).Message, StringComparison.Ordinal);

    [Fact]
    public void FromPairs_UnequalLengths_Throws()
        => Assert.Contains("2 first trials but 1 second", Assert.Throws<ArgumentException>(() => TrialTable.FromPairs([1, 2], [1])).Message, StringComparison.Ordinal);
}
