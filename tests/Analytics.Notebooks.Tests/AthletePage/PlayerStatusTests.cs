using Analytics.Notebooks.AthletePage;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.AthletePage;

public sealed class PlayerStatusTests
{
    private static readonly DateOnly Today = new(2026, 6, 8);

    [Fact]
    public void Overlap_LimitedAndInjured_TheStricterCounts()
    {
        var status = Of(true, new Absence(Today.AddDays(-9), null, "limited"), new Absence(Today.AddDays(-1), Today.AddDays(3), "injured"));
        Assert.True(status.IsOut);
        Assert.Equal("injured from 7 June to 11 June", status.Text);
    }

    [Theory]
    [InlineData("injured", true, true)]
    [InlineData("ill", true, true)]
    [InlineData("absent", true, false)]
    [InlineData("limited", true, false)]
    [InlineData("injured", false, false)] // a page of an earlier day
    public void SpellAfterTheLatestTests_InjuryAndIllnessCount(string word, bool isLatest, bool isOut)
        => Assert.Equal(isOut, Of(isLatest, new Absence(Today.AddDays(2), null, word)).IsOut);

    [Fact]
    public void Limited_IsNotOut()
    {
        var status = Of(true, new Absence(Today, null, "limited"));
        Assert.False(status.IsOut);
        Assert.True(status.IsLimited);
        Assert.Equal("limited since 8 June", status.Text);
    }

    [Fact]
    public void SpellThatIsOver_SaysNothing() => Assert.Null(Of(true, new Absence(Today.AddDays(-9), Today.AddDays(-1), "injured")).Spell);

    private static PlayerStatus Of(bool isLatest, params Absence[] spells)
        => PlayerStatus.Of(new Athlete { Id = "A", Name = "A", Position = "", Group = "", Absences = spells }, Today, isLatest);
}
