using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Seasons;

public class TestQualityTests
{
    private static readonly TestQuality s_good = TestQuality.Of(Course.Profile, SeasonValues.Of(Invented.Metric(), Course.Days));

    [Fact]
    public void Of_TestThatTellsAthletesApart_IsKept()
    {
        Assert.Equal(TestAdvice.Keep, s_good.Advice);
        Assert.StartsWith("Keep: players of a group differ by", s_good.Reason, StringComparison.Ordinal);
        Assert.NotNull(s_good.Icc);
        Assert.True(s_good.TypicalErrorInterval!.Value.Contains(s_good.TypicalError!.Value));
        Assert.Equal(1, s_good.UsableShare);
        // Worked out outside the program from the values of Course: SD of the retest differences/√2, and √2 · t(0.975, 23 df) of it (R 4.2.2: 2.068658).
        Assert.Equal(0.889751, s_good.TypicalError.Value, 6);
        Assert.Equal(2.602989, s_good.DetectableChange!.Value, 6);
    }

    // By hand, normal error known: TE 2, worthwhile 1: 2 ((1.959964 + 0.841621) · 2)² = 62.79, so 63 days; a group of 8: 7.85, so 8.
    [Fact]
    public void DaysNeeded_KnownError_IsTheUsualSampleSizeFormula()
    {
        var metric = Invented.Metric(published: new(null, 2, "k"));
        var quality = TestQuality.Of(Course.Profile with { Retests = [], Worthwhile = new Dictionary<string, double> { ["m"] = 1 } }, SeasonValues.Of(metric, Course.Days));
        Assert.Equal((63, 8), (quality.DaysForAthlete, quality.DaysForGroup));
        Assert.Equal(0.5, quality.WorthwhileToNoise!.Value, 9);
    }

    [Fact]
    public void Of_RetestThatIsAllNoise_IsDropped()
    {
        // Everybody at 100 kg: all that differs is error. With 24 athletes the upper limit would still reach 1.
        IReadOnlyList<AthleteDay> Noise(DateOnly date, int day) => [.. Enumerable.Range(1, 88).Select(i => Invented.Day($"a{i}", date, Invented.Number(100 + Course.Error(i, day))))];
        var days = new[] { Noise(Course.Baseline, 1), Noise(Course.Retest, 4) };
        var quality = TestQuality.Of(new() { Squad = Invented.Squad(88, "Line", "Backs"), Retests = [RepeatDays.Pair(days[0], days[1])] }, SeasonValues.Of(Invented.Metric(), days));
        Assert.Equal(TestAdvice.Drop, quality.Advice);
        Assert.StartsWith("Drop: ", quality.Reason, StringComparison.Ordinal);
        Assert.True(quality.SignalToNoiseInterval!.Value.High < 1);
    }

    [Fact]
    public void Of_NoErrorKnown_IsNeverDroppedButRetested()
    {
        var quality = TestQuality.Of(Course.Profile with { Retests = [] }, SeasonValues.Of(Invented.Metric(), [Course.Days[0]]));
        Assert.Equal(TestAdvice.CannotTellYet, quality.Advice);
        Assert.Equal("Cannot tell yet: no error between days is known; retest 20 players within a week.", quality.Reason);
        Assert.Null(quality.SignalToNoise);
        Assert.Null(quality.DaysForAthlete);
    }

    // Another group's error may not condemn a test here.
    [Fact]
    public void Of_LargePublishedError_IsNotDropped()
    {
        var metric = Invented.Metric(published: new(null, 50, "k"));
        var quality = TestQuality.Of(Course.Profile with { Retests = [] }, SeasonValues.Of(metric, Course.Days));
        Assert.Equal(TestAdvice.CannotTellYet, quality.Advice);
        Assert.Contains("retest 20 players within a week to have your own", quality.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ManyWithoutAValue_IsMended()
    {
        var days = new[] { Course.Day(Course.Baseline, 0, i => i <= 14 ? 0 : double.NaN), Course.Day(Course.Retest, 1, i => i <= 14 ? 0 : double.NaN) };
        var profile = Course.Profile with { Retests = [RepeatDays.Pair(days[0], days[1])] };
        var quality = TestQuality.Of(profile, SeasonValues.Of(Invented.Metric(), days));
        Assert.Equal(TestAdvice.Mend, quality.Advice);
        Assert.Contains("only 58 % of the squad", quality.Reason, StringComparison.Ordinal);
        Assert.EndsWith("find out who is missed and why.", quality.Reason, StringComparison.Ordinal);
    }

    // Two days with 12 and 24 of 24: the median of two counts is their mean, 18.
    [Fact]
    public void UsableShare_EvenNumberOfDays_IsTheMiddleOfTheTwoInTheMiddle()
    {
        var days = new[] { Course.Day(Course.Baseline, 0, i => i <= 12 ? 0 : double.NaN), Course.Day(Course.June, 1, _ => 0) };
        Assert.Equal(0.75, TestQuality.Of(Course.Profile with { Retests = [] }, SeasonValues.Of(Invented.Metric(), days)).UsableShare, 12);
    }

    // Heavy players jump off a lower box on purpose: nobody is told to test them like the others.
    [Fact]
    public void Of_ManyOnAnotherScale_AreToBeJudgedAmongThemselves()
    {
        IReadOnlyList<AthleteDay> Boxes(DateOnly date, int day)
            => [.. Enumerable.Range(1, 24).Select(i => Invented.Day($"a{i}", date, Invented.Number(Course.Level(i) + Course.Error(i, day), i <= 14 ? "box 46 cm" : "box 30 cm")))];
        var days = new[] { Boxes(Course.Baseline, 0), Boxes(Course.Retest, 1) };
        var quality = TestQuality.Of(Course.Profile with { Retests = [RepeatDays.Pair(days[0], days[1])] }, SeasonValues.Of(Invented.Metric(), days));
        Assert.Equal(20, quality.ValuesElsewhere);
        Assert.Contains("20 values measured another way stand apart: judge those players among themselves", quality.Reason, StringComparison.Ordinal);
    }

    // Spread within 2 groups of 12 has 22 df, the retest 23: qf(.975, 22, 23) = 2.32541477516 and qf(.025, 22, 23) = 0.426590000472 in R 4.2.2.
    // Outside the program: SD within groups 7.108446, typical error 0.889751, so s²/e² = 63.82810 and √(63.82810/F − 1).
    [Fact]
    public void SignalToNoise_Limits_AreThoseOfTheFLaw()
    {
        Assert.Equal(7.926418, s_good.SignalToNoise!.Value, 6);
        Assert.Equal(5.142767, s_good.SignalToNoiseInterval!.Value.Low, 6);
        Assert.Equal(12.191144, s_good.SignalToNoiseInterval.Value.High, 6);
    }

    // Outside the program: variances 50.530000 (22 df) and 0.791658 (23 df) differ by 49.738342 with error √(2 (50.53²/22 + 0.791658²/23)); 0.2 of the roots of the 95 % limits.
    [Fact]
    public void Worthwhile_ShareOfASpread_HasTheIntervalOfTheSpread()
    {
        Assert.Equal(1.410508, s_good.Worthwhile.Value!.Value, 6);
        Assert.Equal(0.891607, s_good.Worthwhile.Interval!.Value.Low, 6);
        Assert.Equal(1.784406, s_good.Worthwhile.Interval.Value.High, 6);
        var anchored = TestQuality.Of(Course.Profile with { Worthwhile = new Dictionary<string, double> { ["m"] = 1 } }, SeasonValues.Of(Invented.Metric(), Course.Days));
        Assert.Null(anchored.Worthwhile.Interval);
    }

    [Theory]
    [InlineData("back_squat_1rm", 6, false)]
    [InlineData("momentum_10yd", 0, true)]
    public void Minutes_NotSet_AreCommonPractice(string id, double minutes, bool derived)
    {
        var cost = TestMinutes.Of(id, new Dictionary<string, double>())!;
        Assert.Equal((minutes, derived), (cost.MinutesPerAthlete, cost.IsDerived));
        Assert.Equal(derived ? "worked out of another test" : "common practice, no source", cost.Basis);
    }

    [Fact]
    public void Minutes_SetBySeason_GoBeforeTheUsual()
    {
        var cost = TestMinutes.Of("back_squat_1rm", new Dictionary<string, double> { ["back_squat_1rm"] = 4.5 })!;
        Assert.Equal(("set in season.json", 45.0), (cost.Basis, cost.MinutesFor(10)));
    }

    [Theory]
    [InlineData(0, true, "worked out of another test")]
    [InlineData(2.5, false, "estimated by its author")]
    public void Minutes_OfAnAddedMetric_AreItsAuthors(double minutes, bool derived, string basis)
        => Assert.Equal(new TestCost("jumps", minutes, basis, derived), TestMinutes.Of(new AddedMetric(BodyMetrics.BodyMass, "jumps", minutes)));

    [Fact]
    public void Minutes_EveryMetricOfTheCatalogue_HasAFigureOrIsDerived()
        => Assert.All(MetricCatalogue.All, m => Assert.NotNull(TestMinutes.Of(m.Id, new Dictionary<string, double>())));

    [Fact]
    public void Rule_Statement_NamesEveryThreshold()
    {
        foreach (var part in new[] { "at least 2", "70 %", "below 1", "95 %", "our choice, no source" })
            Assert.Contains(part, TestQualityRule.Standard.Statement, StringComparison.Ordinal);
    }
}
