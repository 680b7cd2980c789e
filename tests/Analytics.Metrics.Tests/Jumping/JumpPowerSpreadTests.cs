using Analytics.Metrics.Jumping;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Jumping;

public class JumpPowerSpreadTests
{
    // 70 cm, 100 kg, 185 cm: lowest Canavan–Vescovi 5723.9 W, highest Johnson–Bahamonde 7416.5 W (rows of tests/oracles/jumping/power.csv).
    [Fact]
    public void Of_Peak_SpansTheFamily()
    {
        var spread = JumpPowerSpread.Of(JumpPowerKind.Peak, Length.FromCentimetres(70), Mass.FromKilograms(100), Length.FromCentimetres(185));
        Assert.Equal(7, spread.Estimates.Count);
        Assert.Equal(5723.9, spread.Low.Watts, 1e-6);
        Assert.Equal(7416.5, spread.High.Watts, 1e-6);
        Assert.Equal(1692.6, spread.Width.Watts, 1e-6);
    }

    [Fact]
    public void Of_NoStature_LeavesOutOnlyTheFormulasThatNeedIt()
    {
        var spread = JumpPowerSpread.Of(JumpPowerKind.Peak, Length.FromCentimetres(70), Mass.FromKilograms(100));
        Assert.Equal(6, spread.Estimates.Count);
        Assert.DoesNotContain(spread.Estimates, e => e.Formula.NeedsStature);
    }

    [Theory]
    [InlineData(JumpPowerKind.Peak)]
    [InlineData(JumpPowerKind.Mean)]
    [InlineData(JumpPowerKind.Fall)]
    public void Of_AnyKind_NeverMixesKindsAndRises(JumpPowerKind kind)
    {
        var spread = JumpPowerSpread.Of(kind, Length.FromCentimetres(50), Mass.FromKilograms(80));
        Assert.NotEmpty(spread.Estimates);
        Assert.All(spread.Estimates, e => Assert.Equal(kind, e.Formula.Kind));
        Assert.Equal(spread.Estimates.OrderBy(e => e.Power), spread.Estimates);
    }
}
