using Analytics.Statistics.Change;

namespace Analytics.Statistics.Tests.Change;

public class ErrorMultipleRuleTests
{
    private static ErrorMultipleRule Rule(double multiple, double df) => new() { Level = 0.95, Multiple = multiple, DegreesOfFreedom = df };

    // The rule of thumb "1.5 to 2 typical errors" [hopkins2000]: 2 Φ(−c/√2); with 9 degrees of freedom R: 2*pt(-1.5/sqrt(2), 9).
    [Fact]
    public void FalseFlagRate_RuleOfThumb_IsStated()
    {
        Oracle.Close(0.2888443663464849, Rule(1.5, double.PositiveInfinity).LargestFalseFlagRate);
        Oracle.Close(0.1572992070502852, Rule(2, double.PositiveInfinity).LargestFalseFlagRate);
        Oracle.Close(0.316477405231992, Rule(1.5, 9).LargestFalseFlagRate);
        Assert.Contains("31.6 % of the time", Rule(1.5, 9).Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void ClearRate_NoChange_IsTheFalseFlagRate()
        => Oracle.Close(Rule(1.5, 9).LargestFalseFlagRate, Rule(1.5, 9).ClearRate(0, 0.5, 9), 1e-8);

    [Theory]
    [InlineData(3.1, Verdict.ClearGain)]
    [InlineData(2.9, Verdict.CannotTellYet)]
    [InlineData(-3.1, Verdict.ClearLoss)]
    public void Judge_ComparesWithTheMultiple(double difference, Verdict expected)
        => Assert.Equal(expected, Rule(1.5, 9).Judge(IndividualChange.Between(0, difference, 2, 9), 1));

    [Fact]
    public void Rule_BadParameters_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Rule(0, 9));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rule(1.5, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rule(double.NaN, 9));
    }

    // The price of narrow intervals: half of the unchanged are called with 50 % and no worthwhile change to pass.
    [Fact]
    public void ResponseWidths_NoThreshold_AreWrongAtOneMinusTheirLevel()
    {
        Assert.All(ResponseWidths.Of(degreesOfFreedom: 12).Widths, w => Oracle.Close(1 - w.Level, w.WrongCalls, 1e-7));
        Assert.Contains("wrong for 50 % of the unchanged", ResponseWidths.Of().ToString(), StringComparison.Ordinal);
        Assert.True(ResponseWidths.Of(1).Widths[0].WrongCalls < 0.5);
        Assert.Throws<ArgumentOutOfRangeException>(() => ResponseWidths.Of(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ResponseWidths.Of(0, 5, 1.0));
    }
}
