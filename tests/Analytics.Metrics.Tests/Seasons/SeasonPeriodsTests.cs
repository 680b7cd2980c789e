using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;

namespace Analytics.Metrics.Tests.Seasons;

public class SeasonPeriodsTests
{
    [Fact]
    public void Of_TestAndRetest_AreOneOccasion()
    {
        var periods = SeasonPeriods.Of([Course.Baseline, Course.Retest, Course.March, Course.June], Course.Profile.Retests);
        Assert.Equal([(Course.Baseline, Course.Retest, 2, 0.0), (Course.March, Course.March, 1, 40.5), (Course.June, Course.June, 1, 138.5)],
            periods.All.Select(p => (p.From, p.To, p.TestingDays, p.Day - periods.All[0].Day)));
        Assert.Contains("one occasion", periods.Rule, StringComparison.Ordinal);
        Assert.False(periods.AreCalendar);
    }

    // A retest ten days later belongs together because the season says so, not by the calendar.
    [Fact]
    public void Of_RetestDaysFartherThanAWeek_AreOneOccasionOnlyWhenNamed()
    {
        DateOnly[] dates = [Course.Baseline, Course.Baseline.AddDays(10)];
        var named = RepeatDays.Pair(Course.Day(dates[0], 0, _ => 0), Course.Day(dates[1], 1, _ => 0));
        Assert.Single(SeasonPeriods.Of(dates, [named]).All);
        Assert.Equal(2, SeasonPeriods.Of(dates, []).All.Count);
    }

    [Fact]
    public void Of_DaysAWeekApart_StayApartAndDaysWithinOneDoNot()
    {
        var monday = Course.Baseline;
        Assert.Equal([0, 0, 1], SeasonPeriodsNumbers(monday, monday.AddDays(6), monday.AddDays(7)));
    }

    [Theory]
    [InlineData(13, "month", 3)] // 13 weeks from 1 August: August, September, October.
    [InlineData(100, "blocks of 2 months", 12)] // 24 months by twos.
    [InlineData(500, "blocks of 12 months", 10)]
    public void Of_TooManyDays_AreTakenTogetherByMonths(int weeks, string by, int count)
    {
        var periods = SeasonPeriods.Of([.. Enumerable.Range(0, weeks).Select(w => new DateOnly(2016, 8, 1).AddDays(7 * w))], []);
        Assert.Equal(count, periods.All.Count);
        Assert.True(periods.AreCalendar);
        Assert.Contains($"{weeks} occasions", periods.Rule, StringComparison.Ordinal);
        Assert.Contains(by + " from August 2016", periods.Rule, StringComparison.Ordinal);
        Assert.Equal(weeks, periods.All.Sum(p => p.TestingDays));
    }

    private static IEnumerable<int> SeasonPeriodsNumbers(params DateOnly[] dates)
    {
        var periods = SeasonPeriods.Of(dates, []);
        return dates.Select(periods.NumberOf);
    }
}
