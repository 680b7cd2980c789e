using Analytics.Metrics.Catalogue;
using Analytics.Planning.Exercises;
using Analytics.Planning.Needs;
using Analytics.Planning.People;
using Analytics.Planning.Rules;
using static Analytics.Planning.Tests.Needs.InventedTests;

namespace Analytics.Planning.Tests.Needs;

/// <summary>Targets of the coach in place of the middle of the group.</summary>
public class GroupTargetTests
{
    private static QualityNeed Strength(GroupTargets targets, params PlayerTest[] tests)
        => PlayerNeeds.Of("Line", tests, new(2026, 3, 9), PlanRules.Standard, targets).Single(n => n.Quality == TrainedQuality.MaximalStrength);

    // Best guess 40 − 20 · 0.9978571 = 20.042857, error 0.9990812; target 25: t = 4.96170, 6 degrees of freedom; R: pt = 0.998726.
    [Fact]
    public void Of_TargetOfTheGroup_TakesThePlaceOfTheMiddle()
    {
        var need = Strength(new([new("Line", "back_squat_1rm", 25)]), Of("back_squat_1rm", Quality.MaximalStrength, 2));
        Assert.Equal(0.998726, need.Probability!.Value, 5);
        Assert.True(need.IsNeed);
        Assert.Equal("test back_squat_1rm 20.0 kg on 2 March 2026: over 99 % likely worse than the coach's target, 25.0 kg", need.Reason);
    }

    [Fact]
    public void Of_TargetBelowHim_IsNoNeedThoughHeIsBehindTheMiddle()
        => Assert.False(Strength(new([new(null, "back_squat_1rm", 15)]), Of("back_squat_1rm", Quality.MaximalStrength, 2)).IsNeed);

    // The line is asked for more than all are: 45 of 40 at the middle.
    [Fact]
    public void Of_TargetOfTheGroup_GoesBeforeThatForAll()
    {
        var targets = new GroupTargets([new(null, "back_squat_1rm", 15), new("Line", "back_squat_1rm", 45), new("Backs", "back_squat_1rm", 5)]);
        Assert.True(Strength(targets, Of("back_squat_1rm", Quality.MaximalStrength, 4)).IsNeed);
    }

    [Fact]
    public void Of_TargetForOneTest_LeavesTheOthersOfTheQualityUnasked()
    {
        var targets = new GroupTargets([new(null, "front_squat_1rm", 45)]);
        var need = Strength(targets, Of("back_squat_1rm", Quality.MaximalStrength, 7), Of("front_squat_1rm", Quality.MaximalStrength, 4));
        Assert.True(need.IsNeed);
        Assert.StartsWith("test front_squat_1rm", need.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TargetForATestOutsideTheOrder_Counts()
    {
        var test = Of("front_squat_1rm", Quality.MaximalStrength, 4);
        Assert.Equal("cannot say: no test of it", Strength(GroupTargets.None, test).Reason);
        Assert.True(Strength(new([new("Line", "front_squat_1rm", 45)]), test).IsNeed);
    }

    // Lower is better: the values run 70, 60, ... 10, the fourth is at 40; a target of 35 he misses, one of 45 he meets.
    [Theory]
    [InlineData(35, true)]
    [InlineData(45, false)]
    public void Of_TargetOfATime_IsMissedAbove(double target, bool isNeed)
    {
        var run = Of("sprint_10yd", Quality.Acceleration, 4, better: Direction.Lower);
        var need = PlayerNeeds.Of("Line", [run], new(2026, 3, 9), PlanRules.Standard, new([new(null, "sprint_10yd", target)])).Single(n => n.Quality == TrainedQuality.Acceleration);
        Assert.Equal(isNeed, need.IsNeed);
    }

    [Fact]
    public void Targets_TwiceOrNoNumber_AreRefused()
    {
        Assert.Contains("two targets for back_squat_1rm, all groups", Assert.Throws<ArgumentException>(() => new GroupTargets([new(null, "back_squat_1rm", 1), new(null, "back_squat_1rm", 2)])).Message, StringComparison.Ordinal);
        Assert.Contains("group 'Line'", Assert.Throws<ArgumentException>(() => new GroupTargets([new("Line", "back_squat_1rm", double.NaN)])).Message, StringComparison.Ordinal);
    }
}
