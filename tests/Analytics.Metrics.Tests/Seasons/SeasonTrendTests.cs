using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Tests.Profile;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Tests.Seasons;

public class SeasonTrendTests
{
    private static readonly SeasonTrend s_trend = SeasonTrend.Of(Course.Profile, SeasonValues.Of(Invented.Metric(), Course.Days));

    [Fact]
    public void Of_TwoGroupsOfWhichOneGains_FindsTheOneAndNotTheOther()
    {
        var (line, backs) = (s_trend.Groups[0], s_trend.Groups[1]);
        Assert.Equal(("Line", "Backs"), (line.Group, backs.Group));
        Assert.Equal(Verdict.ClearGain, backs.Verdict);
        Assert.True(backs.OverSeason!.Interval.Contains(8));
        Assert.True(line.OverSeason!.Interval.Contains(0));
        Assert.NotEqual(Verdict.ClearGain, line.Verdict);
        Assert.True(s_trend.Squad.OverSeason!.Interval.Contains(4));
        Assert.Equal(Verdict.ClearGain, s_trend.Squad.Verdict);
        Assert.Equal([12, 12], s_trend.Groups.Select(g => g.Athletes));
    }

    [Fact]
    public void Of_ValuesThatAreAllTheSame_SaysSoInPlainWords()
    {
        DateOnly[] dates = [Course.Baseline, Course.March, Course.June];
        var days = dates.Select(d => (IReadOnlyList<Analytics.Metrics.Trials.AthleteDay>)[.. Course.Squad.Select(m => Invented.Day(m.Id, d, Invented.Number(100)))]).ToList();
        var trend = SeasonTrend.Of(Course.Profile with { Retests = [] }, SeasonValues.Of(Invented.Metric(), days));
        Assert.Equal(["All values are the same, so there is no trend to fit."], trend.Remarks);
        Assert.Null(trend.Squad.OverSeason);
        Assert.Equal((Verdict.CannotTellYet, "no model could be fitted"), (trend.Squad.Verdict, trend.Squad.Reason));
    }

    [Fact]
    public void Of_RetestDays_AreOnePointWithBothValues()
    {
        Assert.Equal([Course.Baseline, Course.March, Course.June], s_trend.Squad.Points.Select(p => p.Period.From));
        Assert.Equal([24, 24, 24], s_trend.Squad.Points.Select(p => p.Athletes));
        Assert.Null(s_trend.Squad.Points[0].SinceFirst);
        Assert.Equal(4, s_trend.Athletes[0].Values.Count);
    }

    // Half of the athletes gained 8 kg, the others nothing: how the mean of others would fare is far less sure than what these did.
    [Fact]
    public void Of_UnlikeResponses_WidenTheIntervalForOthersOnly()
    {
        var change = s_trend.Squad.OverSeason!;
        // Errors of 0.93 kg alone: ± 2 · 0.93 · √(1.5/24) = 0.46, a width of 0.9; a third of it to not quite twice.
        Assert.InRange(change.Interval.High - change.Interval.Low, 0.3, 1.6);
        // Responses of SD 4.09 kg alone give ± 2.07 · 4.09/√24 = 1.73 kg; errors add to that, no more than to 2.2.
        Assert.InRange(change.OthersLikeThem.High - change.OthersLikeThem.Low, 2 * 1.73, 2 * 2.2);
        // Within a group all gained alike, so the model of groups has no slopes of athletes, and says so.
        Assert.False(s_trend.HasOwnSlopes);
        Assert.Contains(s_trend.Remarks, r => r.StartsWith("Athletes have no slopes of their own in the model", StringComparison.Ordinal));
    }

    // The strongest twelve miss June. A plain mean of who came would fall by 6 kg; nobody changed.
    [Fact]
    public void Of_StrongAthletesMissing_IsNoLossOfTheSquad()
    {
        var days = new[] { Course.Days[0], Course.Days[1], Course.Day(Course.March, 2, _ => 0), Course.Day(Course.June, 3, i => i > 12 ? double.NaN : 0) };
        var trend = SeasonTrend.Of(Course.Profile, SeasonValues.Of(Invented.Metric(), days));
        Assert.True(trend.Squad.OverSeason!.Interval.Contains(0));
        // Three errors of 0.93 √(1/12 + 1/48) = 0.30 kg.
        Assert.InRange(trend.Squad.OverSeason.Change.Difference, -1, 1);
        Assert.Equal(12, trend.Squad.Points[^1].Athletes);
        Assert.Equal(24, trend.Squad.Athletes);
    }

    [Fact]
    public void Of_AmountWithProportionalError_IsModelledAsLogarithmsAndGivenInUnits()
    {
        var amount = Invented.Metric(published: new(2, null, "k")) with { PlausibleLow = 1 };
        var profile = Course.Profile with { Retests = [] };
        var trend = SeasonTrend.Of(profile, SeasonValues.Of(amount, Course.Days));
        Assert.Equal(ErrorScale.Proportional, trend.Scale);
        Assert.StartsWith("logarithms", trend.ScaleReason, StringComparison.Ordinal);
        // Mean level of the 24 athletes is 111.5 kg, of 48 first values known to 0.13; mean change 4 kg, three errors of 0.93 √(1.5/24) = 0.23 each way.
        Assert.InRange(trend.Squad.Points[0].Mean.Value, 111, 112);
        Assert.InRange(trend.Squad.OverSeason!.Change.Difference, 3.3, 4.7);
        Assert.InRange(trend.Squad.OverSeason.Percent, 100 * 3.3 / 112, 100 * 4.7 / 111);
    }

    [Fact]
    public void Of_MetricThatIsNoAmount_IsModelledInUnits()
    {
        Assert.Equal(ErrorScale.Constant, s_trend.Scale);
        Assert.Equal("units: the metric is no amount above 0", s_trend.ScaleReason);
    }

    // What an equation gets wrong about everybody on one day does not average out: 6 kg shared by all in June must be in the interval.
    [Fact]
    public void Of_LastDayEstimated_AddsTheSharedErrorOfTheEquation()
    {
        IReadOnlyList<Analytics.Metrics.Trials.AthleteDay> june =
            [.. Enumerable.Range(1, 24).Select(i => Invented.Day($"a{i}", Course.June, Invented.Estimated(Course.Level(i) + 3 + Course.Error(i, 3), personal: 0.5, shared: 6)))];
        var trend = SeasonTrend.Of(Course.Profile, SeasonValues.Of(Invented.Metric(), [Course.Days[0], Course.Days[1], Course.Day(Course.March, 2, _ => 0), june]));
        var change = trend.Squad.OverSeason!;
        // √(6² + 0.24²) = 6.005; the shared error counted twice would give 8.5.
        Assert.InRange(change.Change.StandardError, 6, 6.3);
        Assert.True(change.Interval.Contains(0));
        Assert.Equal(Verdict.CannotTellYet, trend.Squad.Verdict);
    }

    [Fact]
    public void Cautions_OwnRetest_SayHowFarTheMeanMovedWithoutTraining()
    {
        Assert.NotNull(s_trend.RetestShift);
        Assert.Contains(s_trend.Cautions, c => c.StartsWith("Check by the retest days", StringComparison.Ordinal));
        Assert.Contains(s_trend.Cautions, c => c.StartsWith("What hits everybody alike on one day", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_OneOccasion_HasNoCourseAndSaysWhy()
    {
        var trend = SeasonTrend.Of(Course.Profile, SeasonValues.Of(Invented.Metric(), [Course.Days[0]]));
        Assert.Empty(trend.Squad.Points);
        Assert.Equal((Verdict.CannotTellYet, "one occasion only: nothing to compare it with"), (trend.Squad.Verdict, trend.Squad.Reason));
    }

    [Fact]
    public void Of_AthleteWithoutGroup_IsNamedAndInNoMean()
    {
        var profile = Course.Profile with { Squad = [.. Course.Squad.Skip(1)] };
        var trend = SeasonTrend.Of(profile, SeasonValues.Of(Invented.Metric(), Course.Days));
        Assert.Equal(["a1"], trend.WithoutGroup);
        Assert.Equal(23, trend.Squad.Athletes);
    }

    [Fact]
    public void Of_WeeklyHistory_HasAtMostTwelvePeriodsAndFindsTheGain()
    {
        // 0.05 kg a week; means of months (24 players, 4 weeks) are known to 0.1 kg, so over 140 weeks the slope to 0.001.
        var trend = SeasonTrend.Of(Course.Profile with { Retests = [] }, SeasonValues.Of(Invented.Metric(), Course.Weekly(156, w => 0.05 * w)));
        Assert.True(trend.Periods.AreCalendar);
        Assert.InRange(trend.Squad.Points.Count, 9, 12);
        Assert.InRange(trend.Squad.OverSeason!.Change.Difference / ((trend.Squad.Points[^1].Period.Day - trend.Squad.Points[0].Period.Day) / 7), 0.049, 0.051);
    }
}
