using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Tests.Seasons;

public class SeasonChangeTests
{
    private static readonly SeasonChange s_change = Change(Course.Days);

    [Fact]
    public void Of_BothRetestDays_AveragesThemAndNarrowsTheError()
    {
        var athlete = s_change.Athletes.Single(a => a.AthleteId == "a2");
        // Errors of athlete 2: day 0 (14 % 11 − 5) · 0.3, day 1 (25 % 11 − 5) · 0.3, day 3 (47 % 11 − 5) · 0.3, all −0.6.
        Assert.Equal(101 - 0.6, athlete.Baseline.Value.Value, 9);
        Assert.Equal((2, 1), (athlete.Baseline.Occasions, athlete.Last.Occasions));
        Assert.Equal(8, athlete.Difference, 9);
        // √(1/2 + 1) of the typical error, where two single values have √2; typical error of Course worked out outside the program, 0.889751.
        Assert.Equal(1.089719, athlete.Change!.StandardError, 6);
        Assert.True(athlete.IsWholeSeason);
    }

    [Fact]
    public void Of_GainersAndOthers_FindsThemAndStatesWhatChanceGives()
    {
        Assert.Equal(12, s_change.Gains);
        // Twelve did not change; one of them is flagged here, as chance gives.
        Assert.InRange(s_change.Losses, 0, s_change.ByChance.High);
        Assert.All(s_change.Athletes.Take(12), a => Assert.Equal("Backs", a.Group));
        // 5 % of 24.
        Assert.Equal(1.2, s_change.ByChance.Expected, 9);
    }

    [Fact]
    public void Detectable_StatesTheChangeOfEveryKindOfAthlete()
    {
        var days = new[] { Course.Days[0], Course.Day(Course.Retest, 1, i => i <= 20 ? 0 : double.NaN), Course.Days[3] };
        var change = SeasonChange.Of(Course.Profile, SeasonValues.Of(Invented.Metric(), days));
        Assert.Equal([(1, 1, 4), (2, 1, 20)], change.Detectable.Select(d => (d.BaselineValues, d.LastValues, d.Athletes)));
        Assert.Equal(Math.Sqrt(1.5 / 2), change.Detectable[1].Change / change.Detectable[0].Change, 9);
    }

    [Fact]
    public void Of_PartOfTheSeason_IsJudgedAndSaysSo()
    {
        var days = new[] { Course.Day(Course.Baseline, 0, i => i == 3 ? double.NaN : 0), Course.Day(Course.Retest, 1, i => i == 3 ? double.NaN : 0), Course.Days[2], Course.Days[3] };
        var change = Change(days);
        var late = change.Athletes.Single(a => a.AthleteId == "a3");
        Assert.False(late.IsWholeSeason);
        Assert.Contains("tested from 2 March 2026 to 8 June 2026 only", late.Doubts);
        Assert.Contains(change.Cautions, c => c.StartsWith("1 of 24 athletes were tested over a part of the season only", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_EveryAthleteOfTheSquad_IsInOneListOnly()
    {
        var days = new[] { Course.Day(Course.Baseline, 0, i => i == 1 ? double.NaN : 0), Course.Day(Course.June, 3, i => i is 1 or 2 ? double.NaN : 0) };
        var change = Change(days);
        Assert.Equal(["a2"], change.OneOccasionOnly);
        Assert.Equal(["a1"], change.WithoutValue);
        Assert.Equal(24, change.Athletes.Count + change.OneOccasionOnly.Count + change.WithoutValue.Count);
    }

    // Only test and retest: that is one occasion, not a season.
    [Fact]
    public void Of_RetestAlone_IsNoChange()
        => Assert.Equal(24, Change([Course.Days[0], Course.Days[1]]).OneOccasionOnly.Count);

    [Fact]
    public void Of_MeasuredThenEstimated_AddsTheEquationAsBetweenTwoDays()
    {
        IReadOnlyList<AthleteDay> june = [.. Enumerable.Range(1, 24).Select(i => Invented.Day($"a{i}", Course.June, Invented.Estimated(Course.Level(i), personal: 3, fresh: 4)))];
        var change = Change([Course.Days[0], Course.Days[1], june]);
        // √(1.5 · 0.889751² + 3² + 4²), by hand.
        Assert.All(change.Athletes, a => Assert.Equal(5.117371, a.Change!.StandardError, 6));
        Assert.All(change.Athletes, a => Assert.Contains("the later estimated from 5 repetitions", a.Remark, StringComparison.Ordinal));
        Assert.True(change.Detectable.Single().WithEquation);
    }

    // Two estimates of one baseline: lasting errors of the equation are the same in both, fresh ones average, 3² + 4²/2 = 17.
    [Fact]
    public void Of_EstimatedTwiceThenMeasured_AveragesTheFreshErrorOnly()
    {
        IReadOnlyList<AthleteDay> Estimated(DateOnly date, int number)
            => [.. Enumerable.Range(1, 24).Select(i => Invented.Day($"a{i}", date, Invented.Estimated(Course.Level(i) + Course.Error(i, number), personal: 3, fresh: 4)))];
        var days = new[] { Estimated(Course.Baseline, 0), Estimated(Course.Retest, 1), Course.Days[3] };
        var published = Invented.Metric(published: new(null, 1, "k", 10));
        var profile = Course.Profile with { Retests = [RepeatDays.Pair(days[0], days[1])], MinimumRetested = 99 };
        var change = SeasonChange.Of(profile, SeasonValues.Of(published, days));
        Assert.All(change.Athletes, a => Assert.Equal(Math.Sqrt(1.5 + 17), a.Change!.StandardError, 9));
    }

    [Fact]
    public void Of_NoErrorKnown_ListsChangesWithoutVerdict()
    {
        var change = SeasonChange.Of(Course.Profile with { Retests = [] }, SeasonValues.Of(Invented.Metric(), [Course.Days[0], Course.Days[3]]));
        Assert.All(change.Athletes, a => Assert.Equal((Verdict.CannotTellYet, (IndividualChange?)null), (a.Verdict, a.Change)));
        Assert.All(change.Athletes, a => Assert.StartsWith("no error known", a.Reason, StringComparison.Ordinal));
        Assert.Equal(0, change.ByChance.Looks);
        Assert.Empty(change.Detectable);
    }

    private static SeasonChange Change(IReadOnlyList<IReadOnlyList<AthleteDay>> days) => SeasonChange.Of(Course.Profile, SeasonValues.Of(Invented.Metric(), days));
}
