using Analytics.Statistics.Multiplicity;

namespace Analytics.Statistics.Tests.Multiplicity;

public class ChanceFlagsTests
{
    // R 4.2.2: 720 * .05, qbinom(c(.025, .975), 720, .05), 1 - .95^720.
    [Fact]
    public void OfSquad_SixtyPlayersTwelveMeasures_ExpectsThirtySix()
    {
        var chance = ChanceFlags.OfSquad(60, 12, 0.05);
        Assert.Equal(36, chance.Expected, 10);
        Assert.Equal((25, 48), (chance.Low, chance.High));
        Assert.Equal(1, chance.AtLeastOne, 12);
        Assert.Equal("60 players × 12 measures", chance.Scope);
        Assert.Contains("expected false flags", chance.ToString(), StringComparison.Ordinal);
        Assert.False(chance.IsExceededBy(48));
        Assert.True(chance.IsExceededBy(49));
    }

    [Fact]
    public void OfSquad_NotAllDone_SaysHowManyAreMissing()
    {
        var chance = ChanceFlags.OfSquad(10, 3, 0.05, looks: 26);
        Assert.Equal("10 players × 3 measures, 4 not done", chance.Scope);
        Assert.Equal(1.3, chance.Expected, 12);
    }

    [Fact]
    public void Of_NoLooksOrNoRate_IsNothing()
    {
        Assert.Equal((0.0, 0, 0, 0.0), Figures(ChanceFlags.Of(0, 0.05)));
        Assert.Equal((0.0, 0, 0, 0.0), Figures(ChanceFlags.Of(50, 0)));
        Assert.Equal((50.0, 50, 50, 1.0), Figures(ChanceFlags.Of(50, 1)));
    }

    [Fact]
    public void Of_MoreLooks_NeverExpectFewer()
    {
        var before = ChanceFlags.Of(0, 0.05);
        foreach (var looks in new[] { 1, 5, 30, 200, 3000 })
        {
            var chance = ChanceFlags.Of(looks, 0.05);
            Assert.True(chance.Expected > before.Expected && chance.High >= before.High && chance.AtLeastOne > before.AtLeastOne - 1e-15);
            before = chance;
        }
    }

    [Fact]
    public void Of_BadNumbers_NameThem()
    {
        Assert.Contains("looks is -1; allowed: 0 or more", Message(() => ChanceFlags.Of(-1, 0.05)), StringComparison.Ordinal);
        Assert.Contains("rate is NaN; allowed: 0 to 1", Message(() => ChanceFlags.Of(3, double.NaN)), StringComparison.Ordinal);
        Assert.Contains("looks is 7; allowed: 0 to 6", Message(() => ChanceFlags.OfSquad(2, 3, 0.05, looks: 7)), StringComparison.Ordinal);
        Assert.Contains("players is -2", Message(() => ChanceFlags.OfSquad(-2, 3, 0.05)), StringComparison.Ordinal);
    }

    private static (double, int, int, double) Figures(ChanceFlags chance) => (chance.Expected, chance.Low, chance.High, chance.AtLeastOne);

    private static string Message(Func<object> act) => Assert.ThrowsAny<ArgumentException>(act).Message;
}
