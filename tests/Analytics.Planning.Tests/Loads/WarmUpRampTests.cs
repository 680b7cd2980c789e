using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Tests.Loads;

/// <summary>Warm-up sets: the steps are common practice, no source; their loads by hand.</summary>
public sealed class WarmUpRampTests
{
    [Fact]
    public void Heavy_HasThreeSteps() => Assert.Equal([new(5, 50), new(3, 70), new(1, 85)], WarmUpRamp.For(Made.Squat, Made.Sets(4, 3, 80)));

    [Fact]
    public void Light_HasTwo() => Assert.Equal([new(5, 50), new(3, 75)], WarmUpRamp.For(Made.Squat, Made.Sets(5, 5, 79.5)));

    // 3 with 1 left are 90 % by the textbook's table, 8 with 3 left 70 %.
    [Fact]
    public void ReserveOnly_CountsByTheTable()
    {
        Assert.Equal(3, WarmUpRamp.For(Made.Squat, Made.Sets(4, 3, reserve: 1)).Count);
        Assert.Equal(2, WarmUpRamp.For(Made.Squat, Made.Sets(4, 8, reserve: 3)).Count);
    }

    [Fact]
    public void Ramp_BuildsUpByItself() => Assert.Equal([new(5, 50)], WarmUpRamp.For(Made.Squat, Made.Ramp(5, 3, 60, 90)));

    [Fact]
    public void WithoutABar_HasNone()
    {
        Assert.Empty(WarmUpRamp.For(Made.Squat with { Implement = "dumbbell" }, Made.Sets(4, 3, 85)));
        Assert.Empty(WarmUpRamp.For(Made.Jump, Made.Sets(4, 3)));
        Assert.Empty(WarmUpRamp.For(Made.Squat with { Basis = LoadBasis.BodyMass }, Made.Sets(4, 3)));
    }

    // First working loads by hand: 80 % of each 1RM. 50, 70, 85 % of 40: 20, 28, 34 -> 20, 27.5, 32.5. Of 27.5: 13.75 -> the bar, 19.25 -> the bar again, 23.4 -> 22.5.
    [Theory]
    [InlineData(50, new[] { 20, 27.5, 32.5 })]
    [InlineData(35, new[] { 20, 22.5 })]
    [InlineData(29, new[] { 20.0 })] // 22.5: 11.25, 15.75, 19.1 are all the bar
    [InlineData(25, new double[0])] // the bar itself
    public void Loads_RiseFromTheBarToBelowTheWorkingLoad(double maximum, double[] expected)
    {
        var plan = LoadPlan.Of(Made.Player(Made.Tested("back_squat", maximum)), Made.Item(Made.Squat, Made.Sets(3, 3, 80)), Made.Kilograms, PlanRules.Standard, Made.Today);
        Assert.Equal(expected, plan.WarmUp.Select(w => w.Load.Kilograms));
    }
}
