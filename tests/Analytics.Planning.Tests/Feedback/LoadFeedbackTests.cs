using Analytics.Planning.Exercises;
using Analytics.Planning.Feedback;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using static Analytics.Planning.Tests.Feedback.Log;

namespace Analytics.Planning.Tests.Feedback;

/// <summary>From plan and log to the next load; figures are those of the rule as stated: 2.5 % up, 5 % down, 2 readings, 28 days, rating 8.</summary>
public class LoadFeedbackTests
{
    private static readonly EarlierChoice[] s_twice = [Plan(16), Plan(23)];

    [Fact]
    public void Of_AllDoneTwice_GoesUp()
    {
        var next = Of(s_twice, [All(16), All(23, 8)]);
        Assert.Equal((LoadStep.Progress, 1.025, 100.0), (next.Step, next.Factor, next.PlannedKilograms));
        Assert.Equal("all done each time: 23 March all 5 planned sets, rated 8; 16 March all 5 planned sets, rated 7", next.Reason);
    }

    [Fact]
    public void Of_ShortTwice_GoesDown()
    {
        var next = Of(s_twice, [Short(16, 9.5), Short(23, 10)]);
        Assert.Equal((LoadStep.BackOff, 0.95), (next.Step, next.Factor));
        Assert.Equal("less than planned each time: 23 March 3 of 5 planned sets with the planned repetitions and load, rated 10; 16 March 3 of 5 planned sets with the planned repetitions and load, rated 9.5", next.Reason);
    }

    [Fact]
    public void Of_NotTheSameTwice_Holds()
    {
        foreach (var log in (LoggedSessionPair[])[new(All(16), Short(23)), new(Short(16), All(23))])
        {
            var next = Of(s_twice, [log.First, log.Second]);
            Assert.Equal((LoadStep.Hold, 1.0), (next.Step, next.Factor));
            Assert.StartsWith("the readings do not agree", next.Reason, StringComparison.Ordinal);
        }
    }

    private sealed record LoggedSessionPair(LoggedSession First, LoggedSession Second);

    [Fact]
    public void Of_OneReading_IsNotEnough()
    {
        Assert.Equal("one reading is not enough, it takes 2: 16 March all 5 planned sets, rated 5", Of(s_twice, [All(16, 5)]).Reason);
        Assert.Equal(LoadStep.Hold, Of(s_twice, [Short(23, 10)]).Step);
    }

    [Fact]
    public void Of_NotLogged_HoldsAndIsNotTakenAsNotDone()
    {
        Assert.Equal((LoadStep.Hold, "not logged: hold"), (Of(s_twice, []).Step, Of(s_twice, []).Reason));
        // A session with a rating alone, or with another lift, tells nothing of the squat.
        Assert.Equal("not logged: hold", Of(s_twice, [Did(16, 10, "a"), Did(23, 9, "a", "bench_press", (5, 5, 80))]).Reason);
        // One that was not logged between two that were does not come between them.
        Assert.Equal(LoadStep.Progress, Of([Plan(16), Plan(19), Plan(23)], [All(16), All(23)]).Step);
    }

    [Theory]
    [InlineData(8.0, LoadStep.Progress)]
    [InlineData(8.5, LoadStep.Hold)]
    [InlineData(null, LoadStep.Progress)]
    public void Of_Rating_HoldsOnlyWhenGivenAndHigh(double? rating, LoadStep step)
    {
        var next = Of(s_twice, [All(16, rating), All(23, rating)]);
        Assert.Equal(step, next.Step);
        if (rating is null) Assert.Contains("not rated", next.Reason, StringComparison.Ordinal);
    }

    // Hard but done is no reason to take load off: the rating is of the whole session.
    [Fact]
    public void Of_AllDoneAndRatedTen_Holds() => Assert.Equal(LoadStep.Hold, Of(s_twice, [All(16, 10), All(23, 10)]).Step);

    // 30 March less 28 days is 2 March.
    [Theory]
    [InlineData(2, LoadStep.Progress)]
    [InlineData(1, LoadStep.Hold)]
    public void Of_OldReading_DoesNotCount(int day, LoadStep step) => Assert.Equal(step, Of([Plan(day), Plan(23)], [All(day), All(23)]).Step);

    [Fact]
    public void Of_PlannedForTodayOrLater_IsNotLookedAt()
        => Assert.Empty(new LoadFeedback(PlanRules.Standard, []).Of(PlanReadings.Of([Plan(30), Plan(31)], [All(30), All(31)], Groups), Today));

    // Planned 100 kg: half a per cent is 0.5 kg.
    [Theory]
    [InlineData(99.5, LoadStep.Progress)]
    [InlineData(99.4, LoadStep.BackOff)]
    [InlineData(102.5, LoadStep.Progress)]
    public void Of_RoundedLoad_CountsWithinHalfAPercent(double kilograms, LoadStep step)
        => Assert.Equal(step, Of(s_twice, [Did(16, 7, "a", (5, 5, kilograms)), Did(23, 7, "a", (5, 5, kilograms))]).Step);

    [Fact]
    public void Of_WarmUpSetsLogged_DoNotCountAsWorkingSets()
        => Assert.Equal(LoadStep.BackOff, Of(s_twice, [Did(16, 7, "a", (2, 5, 60), (3, 5, 100)), Did(23, 7, "a", (2, 5, 60), (4, 5, 100))]).Step);

    // A ramp of five to 100 kg: the plan names the top set.
    [Theory]
    [InlineData(100, LoadStep.Progress)]
    [InlineData(97.5, LoadStep.BackOff)]
    public void Of_LoadThatGoesUp_IsHeldAgainstItsTopSet(double top, LoadStep step)
    {
        var ramp = new SetScheme { Id = "ramp", Name = "Ramp", Kind = SchemeKind.Ramp, Qualities = [TrainedQuality.MaximalStrength], Sets = 5, Repetitions = 3, LeastPercent = 60, MostPercent = 85 };
        LoggedSession Ramp(int day) => Did(day, 7, "a", (1, 3, 70), (1, 3, 80), (1, 3, 90), (1, 3, 95), (1, 3, top));
        Assert.Equal(step, Of([Plan(16, 5, 3, 100, scheme: "ramp"), Plan(23, 5, 3, 100, scheme: "ramp")], [Ramp(16), Ramp(23)], schemes: ramp).Step);
        // Without its scheme the row says five sets at the load.
        Assert.Equal(LoadStep.BackOff, Of([Plan(16, 5, 3, 100), Plan(23, 5, 3, 100)], [Ramp(16), Ramp(23)], schemes: ramp).Step);
    }

    // Shared 3 × 3 at 100 kg and own work of 3 × 8 at 80 kg on one day: six sets, none counted twice.
    [Fact]
    public void Of_SharedAndOwnWork_AreOneReading()
    {
        EarlierChoice[] plan = [.. new[] { 16, 23 }.SelectMany(d => new[] { Plan(d, 3, 3, 100), Plan(d, 3, 8, 80) with { IsOwnWork = true } })];
        Assert.Equal(LoadStep.Progress, Of(plan, [.. new[] { 16, 23 }.Select(d => Did(d, 7, "a", (3, 3, 100), (3, 8, 80)))]).Step);
        Assert.Equal(LoadStep.BackOff, Of(plan, [.. new[] { 16, 23 }.Select(d => Did(d, 7, "a", (3, 8, 100), (2, 8, 80)))]).Step);
    }

    [Fact]
    public void Of_PlanWithoutLoadOrSets_HoldsAndSaysSo()
    {
        Assert.Equal("the plan names no load: hold", Of([Plan(16, kilograms: null), Plan(23, kilograms: null)], [All(16), All(23)]).Reason);
        Assert.Equal("the plan names no sets or repetitions: hold", Of([Plan(16, sets: null), Plan(23, sets: null)], [All(16), All(23)]).Reason);
    }

    [Fact]
    public void Of_ClearLossAtATest_NeverGoesUpAndHealthIsFirst()
    {
        var loss = new Dictionary<string, string> { ["a"] = "squat 12 kg less than on 2 March" };
        var up = Of(s_twice, [All(16), All(23)], losses: loss);
        Assert.Equal((LoadStep.Hold, 1.0), (up.Step, up.Factor));
        Assert.StartsWith("health first: squat 12 kg less than on 2 March; ", up.Reason, StringComparison.Ordinal);
        Assert.Equal(LoadStep.BackOff, Of(s_twice, [Short(16), Short(23)], losses: loss).Step);
        Assert.Equal(LoadStep.Progress, Of(s_twice, [All(16), All(23)], losses: new Dictionary<string, string> { ["b"] = "x" }).Step);
    }

    [Fact]
    public void Of_RulesOfTheCoach_AreUsed()
    {
        static PlanRules With(string id, double value, RuleHandling handling = RuleHandling.Refuse) => PlanRules.With([PlanRules.Standard[id] with { Value = value, Handling = handling }]);
        Assert.Equal(1.05, Of(s_twice, [All(16), All(23)], With(RuleIds.ProgressStep, 5)).Factor, 12);
        Assert.Equal(0.9, Of(s_twice, [Short(16), Short(23)], With(RuleIds.BackOffStep, 10)).Factor, 12);
        Assert.Equal("2 readings are not enough, it takes 3", Of(s_twice, [All(16), All(23)], With(RuleIds.ReadingsNeeded, 3)).Reason[..37]);
        // One reading is never enough, whatever the rule says.
        Assert.Equal(LoadStep.Hold, Of(s_twice, [All(23)], With(RuleIds.ReadingsNeeded, 1)).Step);
        Assert.Equal(LoadStep.Hold, Of(s_twice, [All(16), All(23)], With(RuleIds.ProgressStep, 2.5, RuleHandling.Off)).Step);
        Assert.Equal(LoadStep.Hold, Of(s_twice, [Short(16), Short(23)], With(RuleIds.BackOffStep, 5, RuleHandling.Off)).Step);
        Assert.Equal(LoadStep.Progress, Of(s_twice, [All(16, 10), All(23, 10)], With(RuleIds.ProgressRating, 8, RuleHandling.Off)).Step);
    }
}
