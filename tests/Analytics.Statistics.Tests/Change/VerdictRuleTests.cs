using Analytics.Statistics.Change;

namespace Analytics.Statistics.Tests.Change;

public class VerdictRuleTests
{
    // Known typical error 1: the 95 % interval reaches 2.771808 to either side (R: qnorm(.975) * sqrt(2)).
    [Theory]
    [InlineData(2.78, 1.0, Verdict.ClearGain)]
    [InlineData(2.76, 1.0, Verdict.CannotTellYet)]
    [InlineData(-2.78, 1.0, Verdict.ClearLoss)]
    [InlineData(2.78, 2.9, Verdict.CannotTellYet)] // real, but not shown to matter
    [InlineData(0.5, 3.3, Verdict.TooSmallToMatter)]
    [InlineData(0.5, 3.2, Verdict.CannotTellYet)]
    [InlineData(2.78, 6.0, Verdict.TooSmallToMatter)] // interval leaves out 0 and lies inside the band
    [InlineData(1.5, 1.0, Verdict.CannotTellYet)] // beyond the worthwhile change alone is never a clear verdict
    public void Judge_BeyondErrorRule_FollowsBothConditions(double difference, double worthwhile, Verdict expected)
        => Assert.Equal(expected, BeyondErrorRule.Standard.Judge(Change(difference), worthwhile));

    [Theory]
    [InlineData(3.8, 1.0, Verdict.ClearGain)]
    [InlineData(3.7, 1.0, Verdict.CannotTellYet)]
    [InlineData(-3.8, 1.0, Verdict.ClearLoss)]
    [InlineData(0.5, 3.3, Verdict.TooSmallToMatter)]
    public void Judge_BeyondWorthwhileRule_AsksTheWholeInterval(double difference, double worthwhile, Verdict expected)
        => Assert.Equal(expected, new BeyondWorthwhileRule { Level = 0.95 }.Judge(Change(difference), worthwhile));

    [Fact]
    public void Judge_LowerIsBetter_TurnsGainAndLoss()
    {
        Assert.Equal(Verdict.ClearGain, BeyondErrorRule.Standard.Judge(Change(-5), 1, lowerIsBetter: true));
        Assert.Equal(Verdict.ClearLoss, BeyondErrorRule.Standard.Judge(Change(5), 1, lowerIsBetter: true));
    }

    [Fact]
    public void Judge_NoWorthwhileChange_NeverSaysTooSmall()
    {
        Assert.Equal(Verdict.CannotTellYet, BeyondErrorRule.Standard.Judge(Change(0), null));
        Assert.Equal(Verdict.ClearGain, BeyondErrorRule.Standard.Judge(Change(3), null));
    }

    [Fact]
    public void Judge_WorthwhileZero_Throws()
        => Assert.Equal("worthwhile", Assert.Throws<ArgumentOutOfRangeException>(() => BeyondErrorRule.Standard.Judge(Change(1), 0)).ParamName);

    [Fact]
    public void Level_One_Throws() => Assert.Equal("Level", Assert.Throws<ArgumentOutOfRangeException>(() => new BeyondErrorRule { Level = 1 }).ParamName);

    [Fact]
    public void Statement_NamesLevelAndFalseFlagRate()
    {
        Assert.Contains("95 % interval", BeyondErrorRule.Standard.Statement, StringComparison.Ordinal);
        Assert.Contains("at most 5 % of the time", BeyondErrorRule.Standard.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Verdict.ClearGain, "clear gain", true)]
    [InlineData(Verdict.ClearLoss, "clear loss", true)]
    [InlineData(Verdict.TooSmallToMatter, "too small to matter", false)]
    [InlineData(Verdict.CannotTellYet, "cannot tell yet", false)]
    public void Words_EveryVerdict_ArePlain(Verdict verdict, string words, bool clear)
        => Assert.Equal((words, clear), (verdict.Words(), verdict.IsClear()));

    private static IndividualChange Change(double difference) => IndividualChange.Between(0, difference, 1, double.PositiveInfinity);
}
