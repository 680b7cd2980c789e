using Analytics.Notebooks.Charts;

namespace Analytics.Notebooks.Tests.Charts;

public sealed class RoundTicksTests
{
    // By hand: the smallest step of 1, 2 or 5 times a power of ten that gives no more ticks than wanted.
    [Theory]
    [InlineData(110, 254, 5, 50, new[] { 150.0, 200, 250 })]
    [InlineData(110, 254, 8, 20, new[] { 120.0, 140, 160, 180, 200, 220, 240 })]
    [InlineData(1.47, 2.03, 5, 0.2, new[] { 1.6, 1.8, 2.0 })]
    [InlineData(-13.0, 27.0, 6, 10, new[] { -10.0, 0, 10, 20 })]
    [InlineData(0.0, 1.0, 2, 1, new[] { 0.0, 1.0 })]
    [InlineData(0.4, 0.6, 5, 0.05, new[] { 0.4, 0.45, 0.5, 0.55, 0.6 })]
    public void Between_Limits_GivesRoundValues(double low, double high, int most, double step, double[] expected)
    {
        var (actual, ticks) = RoundTicks.Between(low, high, most);

        Assert.Equal(step, actual, 1e-12);
        Assert.Equal(expected.Length, ticks.Count);
        for (var i = 0; i < expected.Length; i++) Assert.Equal(expected[i], ticks[i], 1e-9);
    }

    [Theory]
    [InlineData(1e-9)]
    [InlineData(0.37)]
    [InlineData(1234567)]
    public void Between_AnyScale_GivesTwoTicksOrMore(double scale)
    {
        for (var i = 0; i < 200; i++)
        {
            var (low, high) = ((i * 0.173 - 17) * scale, (i * 0.391 + 1.3) * scale);
            Assert.InRange(RoundTicks.Between(low, high, 5).Values.Count, 2, 5);
        }
    }

    [Theory]
    [InlineData(50, 0)]
    [InlineData(1, 0)]
    [InlineData(0.5, 1)]
    [InlineData(0.02, 2)]
    [InlineData(0.001, 3)]
    public void Decimals_Step_ShowItExactly(double step, int expected) => Assert.Equal(expected, RoundTicks.Decimals(step));
}
