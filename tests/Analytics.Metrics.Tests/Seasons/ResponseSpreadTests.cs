using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Tests.Profile;

namespace Analytics.Metrics.Tests.Seasons;

public class ResponseSpreadTests
{
    // Half gain 8 kg, half nothing: SD of true changes 4 √(24/23) = 4.09 kg.
    [Fact]
    public void Of_HalfRespond_FindsTheSpreadAndNamesNobody()
    {
        var spread = Spread(i => i % 2 == 0 ? 8 : 0);
        Assert.True(spread.Responses!.Interval.Contains(4.09));
        Assert.True(spread.Responses.Interval.Low > 0);
        Assert.StartsWith("Athletes responded differently", spread.Words, StringComparison.Ordinal);
        Assert.InRange(spread.Responders!.Above, spread.ImproversRange!.Value.Low, spread.ImproversRange.Value.High);
        Assert.DoesNotContain("a2", spread.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AllAlike_FindsNoDifferenceAndSaysWhatRemainsPossible()
    {
        var spread = Spread(_ => 5);
        Assert.True(spread.Responses!.Interval.Low <= 0);
        Assert.Contains("true changes may differ by an SD of up to", spread.Words, StringComparison.Ordinal);
    }

    // Shares of 0 or 1 may not be hidden when the spread may be 0: a mean gain above the worthwhile change may be everybody's.
    [Fact]
    public void Of_SpreadMayBeNothing_RangeReachesEverybody()
    {
        var spread = Spread(i => 5 + (i % 3));
        Assert.NotNull(spread.Responders);
        Assert.True(spread.Responses!.Interval.Low <= 0);
        Assert.Equal(1, spread.ImproversRange!.Value.High);
    }

    [Fact]
    public void Of_TooFewAthletes_CannotBeTold()
    {
        var spread = Spread(i => i <= 5 ? 1 : double.NaN);
        Assert.Null(spread.Responses);
        Assert.Equal("Cannot be told: 5 athletes were tested over the whole season; 6 are needed.", spread.Words);
    }

    [Fact]
    public void Of_NoErrorBetweenDays_CannotBeTold()
    {
        var change = SeasonChange.Of(Course.Profile with { Retests = [] }, SeasonValues.Of(Invented.Metric(), [Course.Days[0], Course.Days[3]]));
        Assert.StartsWith("Cannot be told: no error between days is known", ResponseSpread.Of(change).Words, StringComparison.Ordinal);
    }

    private static ResponseSpread Spread(Func<int, double> gain) => ResponseSpread.Of(
        SeasonChange.Of(Course.Profile, SeasonValues.Of(Invented.Metric(), [Course.Days[0], Course.Days[1], Course.Day(Course.June, 3, gain)])));
}
