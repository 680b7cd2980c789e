using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Rules;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Planning.Tests;

/// <summary>What an exercise asks of a player. The player weighs 90 kg; a squat of 1.5 body masses is 135 kg.</summary>
public sealed class PrerequisiteTests
{
    private static readonly Exercise s_depthJump = Made.Jump with { Id = "depth_jump", LeastSquatRatio = 1.5 };

    private static string? Lacks(KnownMaximum? squat, Exercise? exercise = null) => Prerequisite.Lacks(squat is null ? Made.Player() : Made.Player(squat), exercise ?? s_depthJump, PlanRules.Standard, Made.Today);

    private static KnownMaximum Squat(double kilograms) => Made.Tested("back_squat", kilograms);

    [Fact]
    public void SquatRatio_AtTheFigure_IsEnough()
    {
        Assert.Null(Lacks(Squat(135)));
        Assert.Equal("squats 1.49 times his body mass, 1.5 asked", Lacks(Squat(134)));
        Assert.Equal("back squat or body mass not tested", Lacks(null));
    }

    // 150 kg would do: but not from 183 days ago, not before an injury, and of a doubtful or old one the lower side, 130 kg.
    [Fact]
    public void SquatTest_CountsAsForLoads()
    {
        Assert.Equal("his back squat was tested too long ago", Lacks(Squat(150) with { Date = Made.Today.AddDays(-183) }));
        Assert.Equal("hurt since his back squat was tested", Lacks(Squat(150) with { HurtSince = Made.Today.AddDays(-3) }));
        var wide = Squat(150) with { Range = new Interval(130, 170) };
        Assert.Equal("squats 1.44 times his body mass, 1.5 asked", Lacks(wide));
        Assert.Equal("squats 1.44 times his body mass, 1.5 asked", Lacks(wide with { Range = new Interval(130, 151), Doubt = "one set" }));
        Assert.Equal("squats 1.44 times his body mass, 1.5 asked", Lacks(Squat(150) with { Range = new Interval(130, 151), Date = Made.Today.AddDays(-50) }));
    }

    [Fact]
    public void MostBodyMass_UnknownMass_IsNotGivenIt()
    {
        var light = Made.Jump with { MostBodyMass = Mass.FromKilograms(100) };
        Assert.Null(Lacks(null, light));
        Assert.Equal("heavier than the exercise is meant for", Lacks(null, light with { MostBodyMass = Mass.FromKilograms(89) }));
        Assert.Equal("body mass not known, and the exercise is not for heavy players", Prerequisite.Lacks(Made.Player() with { BodyMass = null }, light, PlanRules.Standard, Made.Today));
    }

    // 30 to 60 cm: the middle for who is known to be light enough, else the lowest.
    [Fact]
    public void Height_UnknownBodyMass_TakesTheLowest()
    {
        Length? Height(PlanPlayer player) => LoadPlan.Of(player, Made.Item(Made.Jump, Made.Sets(4, 5)), Made.Kilograms, PlanRules.Standard, Made.Today).Height;
        Assert.Equal(45, Height(Made.Player())!.Value.Centimetres, 9);
        Assert.Equal(30, Height(Made.Player() with { BodyMass = null })!.Value.Centimetres, 9);
    }
}
