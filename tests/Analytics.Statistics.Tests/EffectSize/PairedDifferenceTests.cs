using Analytics.Statistics.EffectSize;

namespace Analytics.Statistics.Tests.EffectSize;

public class PairedDifferenceTests
{
    private static readonly double[] s_first = [10, 12, 9, 14, 11], s_second = [12, 13, 12, 15, 11.5];

    [Fact]
    public void Between_ShiftAndScale_LeaveEffectsAlone()
    {
        PairedDifference own = PairedDifference.Between(s_first, s_second),
            moved = PairedDifference.Between([.. s_first.Select(v => 3 * v - 50)], [.. s_second.Select(v => 3 * v - 50)]);
        Oracle.Close(own.Z, moved.Z, 1e-11);
        Oracle.Close(own.Average, moved.Average, 1e-11);
        Oracle.Close(own.RepeatedMeasures, moved.RepeatedMeasures, 1e-9);
        Oracle.Close(own.Correlation, moved.Correlation, 1e-10);
    }

    [Fact]
    public void Between_PairsInAnotherOrder_AreTheSame()
    {
        int[] order = [3, 0, 4, 1, 2];
        Oracle.Close(PairedDifference.Between(s_first, s_second).Z, PairedDifference.Between([.. order.Select(i => s_first[i])], [.. order.Select(i => s_second[i])]).Z, 1e-13);
    }

    [Fact]
    public void Between_TwoPairs_HasNoCorrectedEffect()
    {
        var pairs = PairedDifference.Between([1, 2], [3, 5]);
        Assert.Null(pairs.CorrectedZ);
        Assert.Contains("two pairs only", pairs.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Between_EqualDifferences_SaysSo()
        => Assert.Contains("All differences are equal", Assert.Throws<ArgumentException>(() => PairedDifference.Between([1.1, 2.2, 3.3], [2.1, 3.2, 4.3])).Message, StringComparison.Ordinal);

    [Fact]
    public void Between_UnequalLists_SaysHowMany()
        => Assert.Contains("second holds 2 values beside 3", Assert.Throws<ArgumentException>(() => PairedDifference.Between([1, 2, 3], [2, 3])).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    public void Between_NotFinite_Throws(double value)
        => Assert.Contains("must be a finite number", Assert.ThrowsAny<ArgumentException>(() => PairedDifference.Between([1, 2, value], [2, 3, 5])).Message, StringComparison.Ordinal);
}
