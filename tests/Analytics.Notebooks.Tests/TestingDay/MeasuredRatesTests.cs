using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.Tests.TestingDay;

public class MeasuredRatesTests
{
    [Fact]
    public void All_EveryCase_IsAPercentage()
    {
        Assert.Equal(12, MeasuredRates.All.Count);
        Assert.All(MeasuredRates.All, r => Assert.True(r is { IntervalPercent: > 90 and < 100, FalseFlagPercent: > 0 and < 10 }));
    }

    // By ratio: 14 lies between 10 and 20 at √200 = 14.1, 35 between 19 and 59 at √1121 = 33.5.
    [Theory]
    [InlineData(14, 13, 10, 9)]
    [InlineData(15, 14, 20, 19)]
    [InlineData(52, 35, 60, 59)]
    [InlineData(1, 1, 5, 9)]
    [InlineData(400, double.PositiveInfinity, 60, 59)]
    public void Nearest_ByRatio(int players, double degrees, int nearPlayers, double nearDegrees)
    {
        var near = MeasuredRates.Nearest(players, degrees);
        Assert.Equal((nearPlayers, nearDegrees), (near.Players, near.DegreesOfFreedom));
    }

    [Fact]
    public void Sentence_NoErrorKnown_QuotesNothing()
    {
        var text = MeasuredRates.Sentence(12, []);
        Assert.StartsWith("Nobody is judged", text, StringComparison.Ordinal);
        Assert.DoesNotContain("%", text, StringComparison.Ordinal);
    }

    // The written season retests its 12 players, 11 degrees of freedom: nearest are 10 players and 9.
    [Fact]
    public void Methods_RetestedSquad_QuotesTheNearestCaseAndNamesIt()
    {
        using var season = new WrittenSeason().Squad().Day("2026-01-12").Day("2026-01-15", wobble: 1).Day("2026-03-02");
        var text = TestingDayReport.Open(season.Folder).Methods().ToText().Replace("\n", " ", StringComparison.Ordinal);
        var near = MeasuredRates.All.Single(r => r is { Players: 10, DegreesOfFreedom: 9 });
        Assert.Contains("nearest case (10 players, typical error with 9 degrees of freedom; here 12, and 11 at the least)", text, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"{near.FalseFlagPercent:0.0}\u2009% of the unchanged players"), text, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"true change of {near.IntervalPercent:0.0}\u2009%"), text, StringComparison.Ordinal);
    }
}
