using Analytics.Metrics.Bench;
using Analytics.Metrics.Tests.Profile;

namespace Analytics.Metrics.Tests.Bench;

/// <summary>Floor and ceiling: more than 15 % at an end [terwee2007], and at least three athletes.</summary>
public class EndPileTests
{
    [Theory]
    [InlineData(20, 3, false)]
    [InlineData(20, 4, true)]
    [InlineData(19, 3, true)]
    [InlineData(8, 2, false)]
    [InlineData(8, 3, true)]
    [InlineData(40, 6, false)]
    [InlineData(40, 7, true)]
    [InlineData(60, 9, false)]
    [InlineData(100, 15, false)]
    [InlineData(140, 21, false)]
    public void Floor_AtTheEdge_NeedsMoreThanFifteenPercent(int athletes, int atLowest, bool floor)
    {
        var pile = Pile([.. Enumerable.Range(0, athletes).Select(i => i < atLowest ? 10.0 : 20.0 + i)]);

        Assert.Equal((athletes, atLowest, floor, false), (pile.N, pile.AtLowest, pile.HasFloor, pile.HasCeiling));
    }

    [Fact]
    public void Ceiling_IsTheOtherEnd()
    {
        var pile = Pile([.. Enumerable.Range(0, 20).Select(i => Math.Min(i, 15.0))]);

        Assert.Equal((1, 5, false, true), (pile.AtLowest, pile.AtHighest, pile.HasFloor, pile.HasCeiling));
    }

    // One decimal is shown: 10.01 and 10.04 read the same, 10.06 does not.
    [Fact]
    public void Values_ThatReadTheSame_AreTheSame()
        => Assert.Equal(3, Pile(10, 10.01, 10.04, 10.06, 12, 13, 14, 15).AtLowest);

    [Fact]
    public void Values_OutsideWhatIsBelieved_AreCounted()
    {
        var pile = Pile(-1, 0, 500, 1000, 1001, 2000);

        Assert.Equal((3, 6), (pile.OutsideBelieved, pile.N));
    }

    [Fact]
    public void Values_AllEqual_AreFloorAndCeiling()
    {
        var pile = Pile([.. Enumerable.Range(0, 8).Select(_ => 10.0)]);

        Assert.Equal((8, 8, true, true), (pile.AtLowest, pile.AtHighest, pile.HasFloor, pile.HasCeiling));
    }

    private static EndPile Pile(params double[] values) => EndPile.Of(Invented.Metric(), Benches.One([.. values.Select(v => ("Line", v))]).Values);
}
