using Analytics.Metrics.Catalogue;
using Analytics.Planning.Exercises;
using Analytics.Planning.Needs;
using Analytics.Planning.People;
using Analytics.Planning.Rules;
using static Analytics.Planning.Tests.Needs.InventedTests;

namespace Analytics.Planning.Tests.Needs;

/// <summary>Needs of one player, quality by quality.</summary>
public class PlayerNeedsTests
{
    private static readonly DateOnly s_week = new(2026, 3, 9);

    private static QualityNeed Need(TrainedQuality quality, IEnumerable<PlayerTest> tests, PlanRules? rules = null, GroupTargets? targets = null, DateOnly? today = null)
        => PlayerNeeds.Of("Line", tests, today ?? s_week, rules ?? PlanRules.Standard, targets ?? GroupTargets.None).Single(n => n.Quality == quality);

    private static PlanRules Rule(string id, double? value = null, RuleHandling handling = RuleHandling.Refuse)
        => PlanRules.With([PlanRules.Standard[id] with { Value = value ?? PlanRules.Standard.Value(id), Handling = handling }]);

    private static PlayerTest Squat(int place, DateOnly? date = null) => Of("back_squat_1rm", Quality.MaximalStrength, place, date);

    private static PlayerTest Jump(int place, DateOnly? date = null) => Of("cmj_height", Quality.ExplosivePower, place, date);

    private static PlayerTest Clean(int place, DateOnly? date = null) => Of("power_clean_1rm", Quality.ExplosivePower, place, date);

    private static PlayerTest Bench(int place, DateOnly? date = null) => Of("bench_press_1rm", Quality.MaximalStrength, place, date);

    [Fact]
    public void Of_FarBehind_IsANeedWithItsReason()
    {
        var need = Need(TrainedQuality.MaximalStrength, [Squat(2)]);
        Assert.True(need.IsNeed);
        Assert.Equal(0.94732, need.Probability!.Value, 4);
        Assert.Equal("test back_squat_1rm 20.0 kg on 2 March 2026: 95 % likely worse than the middle of his group, 40.0 kg, by more than 4.3 kg", need.Reason);
    }

    // 0.74197 is below 0.80 and above 0.70.
    [Theory]
    [InlineData(80, false)]
    [InlineData(70, true)]
    public void Of_TheRulesFigure_Decides(double percent, bool isNeed)
    {
        var need = Need(TrainedQuality.MaximalStrength, [Squat(3)], Rule(RuleIds.NeedProbability, percent));
        Assert.Equal(isNeed, need.IsNeed);
        Assert.Equal(0.74197, need.Probability!.Value, 4);
        Assert.Equal(!isNeed, need.Reason.Contains("a need takes 80 %", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_RuleSwitchedOff_NamesNoNeed()
    {
        var need = Need(TrainedQuality.MaximalStrength, [Squat(1)], Rule(RuleIds.NeedProbability, handling: RuleHandling.Off));
        Assert.False(need.IsNeed);
        Assert.EndsWith("needs are switched off", need.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AnyTests_HasEveryQualityOnceInSessionOrder()
    {
        var needs = PlayerNeeds.Of("Line", [Squat(1)], s_week, PlanRules.Standard, GroupTargets.None);
        Assert.Equal(TrainedQualities.All, needs.Select(n => n.Quality));
        Assert.Equal([TrainedQuality.MaximalStrength], needs.Where(n => n.IsNeed).Select(n => n.Quality));
        Assert.All(needs.Where(n => n.Quality != TrainedQuality.MaximalStrength), n => Assert.Equal((null, "cannot say: no test of it"), (n.Probability, n.Reason)));
    }

    [Fact]
    public void Of_AnotherTestOfTheQualityIsNotBehind_CannotSay()
    {
        // The fourth of seven is at the middle: 0.30895 behind.
        var need = Need(TrainedQuality.ExplosivePower, [Clean(4), Jump(1)]);
        Assert.Equal((null, false), (need.Probability, need.IsNeed));
        Assert.StartsWith("cannot say: tests disagree: test cmj_height 10.0 kg", need.Reason, StringComparison.Ordinal);
        Assert.Contains("test power_clean_1rm 40.0 kg on 2 March 2026: 31 % likely", need.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AnotherTestLessSurelyBehind_DoesNotObject() => Assert.True(Need(TrainedQuality.ExplosivePower, [Jump(1), Clean(3)]).IsNeed);

    // The first test speaks: that the second says "behind" makes no need.
    [Fact]
    public void Of_OnlyALaterTestIsBehind_IsNoNeed() => Assert.False(Need(TrainedQuality.ExplosivePower, [Jump(4), Clean(1)]).IsNeed);

    // A good bench says nothing about a weak squat, nor a good squat about a weak bench: each half of the body has an entry of its own.
    [Theory]
    [InlineData(1, 7, true, false)]
    [InlineData(7, 1, false, true)]
    [InlineData(1, 1, true, true)]
    public void Of_SquatAndBench_AreJudgedEachForItself(int squat, int bench, bool legs, bool upper)
    {
        var strength = PlayerNeeds.Of("Line", [Bench(bench), Squat(squat)], s_week, PlanRules.Standard, GroupTargets.None).Where(n => n.Quality == TrainedQuality.MaximalStrength).ToList();
        Assert.Equal([("maximal strength for the legs", legs), ("maximal strength for the upper body", upper)], strength.Select(n => (n.What, n.IsNeed)));
        Assert.StartsWith("test back_squat_1rm", strength[0].Reason, StringComparison.Ordinal);
        Assert.StartsWith("test bench_press_1rm", strength[1].Reason, StringComparison.Ordinal);
    }

    // A good top speed does not speak against a slow start: two tested qualities that one kind of work serves.
    [Fact]
    public void Of_GoodTopSpeedBesideASlowStart_IsANeedOfAcceleration()
    {
        var start = Of("sprint_10yd", Quality.Acceleration, 1, better: Direction.Lower);
        var need = Need(TrainedQuality.Acceleration, [start, Of("max_speed", Quality.MaximalSpeed, 7)]);
        Assert.True(need.IsNeed);
        Assert.Equal(0.98972, need.Probability!.Value, 4);
        Assert.Contains("70.0 kg", need.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_BodySizeAndMomentum_AreNoNeeds()
        => Assert.DoesNotContain(PlayerNeeds.Of("Line", [Of("momentum_10yd", Quality.Momentum, 1), Of("body_mass", Quality.Body, 1)], s_week, PlanRules.Standard, GroupTargets.None), n => n.Probability is not null);

    // 2 March plus 182 days is 31 August.
    [Theory]
    [InlineData(2026, 8, 31, true)]
    [InlineData(2026, 9, 1, false)]
    public void Of_ExpiredTest_SaysNothing(int year, int month, int day, bool isNeed)
    {
        var need = Need(TrainedQuality.MaximalStrength, [Squat(1)], today: new(year, month, day));
        Assert.Equal(isNeed, need.IsNeed);
        if (isNeed) Assert.EndsWith("old: 182 days", need.Reason, StringComparison.Ordinal);
        else Assert.Equal("cannot say: the last test of it, test back_squat_1rm on 2 March 2026, is 183 days old; after 182 it says nothing about today", need.Reason);
    }

    [Fact]
    public void Of_ExpiredTest_NeitherSpeaksNorObjects()
    {
        var today = new DateOnly(2026, 9, 1);
        Assert.True(Need(TrainedQuality.ExplosivePower, [Jump(4), Clean(1, new(2026, 8, 3))], today: today).IsNeed);
        Assert.True(Need(TrainedQuality.ExplosivePower, [Jump(1, new(2026, 8, 3)), Clean(4)], today: today).IsNeed);
        Assert.True(Need(TrainedQuality.MaximalStrength, [Squat(1)], Rule(RuleIds.TestExpiresAfter, handling: RuleHandling.Off), today: today).IsNeed);
    }

    [Fact]
    public void Of_TestAfterTheDay_IsNotLookedAt()
        => Assert.Equal("cannot say: no test of it", Need(TrainedQuality.MaximalStrength, [Squat(1)], today: new(2026, 3, 1)).Reason);

    [Fact]
    public void Of_NotComparable_SaysWhy()
    {
        var alone = Squat(1) with { Standing = null, Reason = "measured by hand; the squad by gates" };
        Assert.Equal("cannot say: test back_squat_1rm on 2 March 2026 cannot be compared: measured by hand; the squad by gates", Need(TrainedQuality.MaximalStrength, [alone]).Reason);
        var noisy = Of("back_squat_1rm", Quality.MaximalStrength, 1, error: new(null, 50, "key"));
        Assert.Contains("no more than test error explains", Need(TrainedQuality.MaximalStrength, [noisy]).Reason, StringComparison.Ordinal);
        // A second test that can be compared speaks in its place.
        var jump = Jump(1) with { Standing = null, Reason = "measured by reach; the squad by mat" };
        Assert.True(Need(TrainedQuality.ExplosivePower, [jump, Clean(1)]).IsNeed);
    }

    [Fact]
    public void Of_TwoTestsOfAMetric_AreRefused()
        => Assert.Contains("back_squat_1rm", Assert.Throws<ArgumentException>(() => Need(TrainedQuality.MaximalStrength, [Squat(1), Squat(2, new(2026, 3, 5))])).Message, StringComparison.Ordinal);
}
