using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Tests.Summaries;

public class QuantileTypesTests
{
    private static readonly double[] s_values = [12.1, 15.3, 9.8, 20.4, 17.7, 11.2, 14.9, 13.3, 18.6, 10.5];

    // Printed by R 4.2.2, quantile(x, .25, type = ) with the nine definitions of Hyndman and Fan 1996.
    [Theory]
    [InlineData(QuantileType.InverseOfDistribution, 11.2)]
    [InlineData(QuantileType.InverseWithAveraging, 11.2)]
    [InlineData(QuantileType.NearestEven, 10.5)]
    [InlineData(QuantileType.LinearOfDistribution, 10.85)]
    [InlineData(QuantileType.MidSteps, 11.2)]
    [InlineData(QuantileType.ExpectedShare, 11.025)]
    [InlineData(QuantileType.ModeOfShare, 11.425)]
    [InlineData(QuantileType.MedianUnbiased, 11.14166667)]
    [InlineData(QuantileType.NormalUnbiased, 11.15625)]
    public void Of_LowerQuartile_MatchesPrint(QuantileType type, double printed) => Assert.Equal(printed, Quantiles.Of(s_values, 0.25, type), 8);

    public static TheoryData<QuantileType> Types => [.. Enum.GetValues<QuantileType>()];

    // Hyndman and Fan's properties: quantiles rise with p, lie within the data, and follow a change of zero and unit.
    [Theory]
    [MemberData(nameof(Types))]
    public void Of_AnyShare_RisesAndFollowsShiftAndScale(QuantileType type)
    {
        var random = new Random(3);
        double[] y = [.. Enumerable.Range(0, 23).Select(_ => random.NextDouble())];
        var before = double.NegativeInfinity;
        for (var p = 0.0; p <= 1; p += 1.0 / 64)
        {
            var q = Quantiles.Of(y, p, type);
            Assert.InRange(q, Math.Max(before, y.Min()), y.Max());
            Assert.Equal(100 + 3 * q, Quantiles.Of([.. y.Select(v => 100 + 3 * v)], p, type), 1e-12);
            before = q;
        }
    }

    // Steps exactly at whole places, where n p comes out a little off: R gives the 3rd, 7th and 9th of ten.
    [Theory]
    [InlineData(0.3, 11.2)]
    [InlineData(0.7, 15.3)]
    [InlineData(0.9, 18.6)]
    public void Of_StepAtAWholePlace_IsNotMissed(double p, double expected) => Assert.Equal(expected, Quantiles.Of(s_values, p, QuantileType.InverseOfDistribution));

    [Fact]
    public void Of_UnknownType_NamesRange()
        => Assert.Contains("allowed: 1 to 9", Assert.Throws<ArgumentOutOfRangeException>(() => Quantiles.Of(s_values, 0.5, (QuantileType)10)).Message, StringComparison.Ordinal);

    [Fact]
    public void HarrellDavis_OneValue_IsIt() => Assert.Equal(7, HarrellDavis.Of([7], 0.3), 1e-14);

    // By hand: halves 1 2 3 and 3 4 9, the middle value in both.
    [Fact]
    public void Hinges_OddCount_ShareTheMiddle()
    {
        var five = TukeyHinges.Of([9, 1, 3, 2, 4]);
        Assert.Equal((2, 3, 4), (five.LowerHinge, five.Median, five.UpperHinge));
    }

    [Fact]
    public void PercentileRank_FourDefinitions_DifferAtTheTop()
    {
        double[] five = [1, 2, 3, 4, 5];
        Assert.Equal([0.8, 0.9, 1, 1], Enum.GetValues<RankDefinition>().Select(d => PercentileRank.Of(five, 5, d).Share));
    }

    [Fact]
    public void PercentileRank_StrangerAmongOthers_Throws()
        => Assert.Contains("2.5 is not one of the 3 values", Assert.Throws<ArgumentException>(() => PercentileRank.Of([1, 2, 3], 2.5, RankDefinition.ShareOfOthersBelow)).Message, StringComparison.Ordinal);

    [Fact]
    public void PercentileRank_NotANumber_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => PercentileRank.Of([1, 2, 3], double.NaN));
}
