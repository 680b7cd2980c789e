using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Charts;

public sealed class LinearScaleTests
{
    [Fact]
    public void Over_Values_AllLieInside()
    {
        var scale = LinearScale.Over([1.62, 1.71, 1.98], 170);
        Assert.All([1.62, 1.71, 1.98], v => Assert.InRange(scale.Percent(v), 1, 99));
        Assert.All(scale.Ticks, t => Assert.InRange(scale.Percent(t), 0, 100));
    }

    [Fact]
    public void Over_NarrowDrawing_HasFewerTicks()
        => Assert.True(LinearScale.Over([10_000, 20_000], 90).Ticks.Count < LinearScale.Over([10_000, 20_000], 600).Ticks.Count);

    [Theory]
    [InlineData(150)]
    [InlineData(300)]
    public void Over_Labels_DoNotMeetInTheNarrowestDrawing(double narrowest)
    {
        foreach (var (low, high) in new[] { (110.0, 254.0), (1.47, 2.03), (-0.0013, 0.0021), (9_800, 12_300) })
        {
            var scale = LinearScale.Over([low, high], narrowest, signed: true);
            for (var i = 1; i < scale.Ticks.Count; i++)
            {
                var apart = (scale.Percent(scale.Ticks[i]) - scale.Percent(scale.Ticks[i - 1])) / 100 * narrowest;
                var half = (TextWidth.Of(scale.Label(scale.Ticks[i]), 12) + TextWidth.Of(scale.Label(scale.Ticks[i - 1]), 12)) / 2;
                Assert.True(apart > half, $"{low} to {high}: {apart:0} pixels for {half:0}");
            }
        }
    }

    [Fact]
    public void Over_ValuesThatCannotBeDrawn_AreLeftOut()
    {
        var scale = LinearScale.Over([100, 200, double.NaN, double.PositiveInfinity, 1e308], 300);
        Assert.InRange(scale.High, 200, 220);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(171.5)]
    public void Over_OneValue_StandsInTheMiddle(double value) => Assert.Equal(50, LinearScale.Over([value, value], 300).Percent(value), 9);

    [Fact]
    public void Over_NoValues_StillHasAnAxis() => Assert.NotEmpty(LinearScale.Over([], 300).Ticks);

    [Fact]
    public void Label_Signed_HasPlusAndRealMinus()
    {
        var scale = LinearScale.Over([-13, 27], 400, signed: true);
        Assert.Equal(["\u221210", "0", "+10", "+20"], scale.Ticks.Select(scale.Label));
    }
}
