using Analytics.Planning.Dose;
using Analytics.Planning.Rules;
using Analytics.Quantities;

namespace Analytics.Planning.Tests.Dose;

/// <summary>Upper figures of the textbook's guide, 80–100, 100–120, 120–140 [baechle2008; from memory]; three quarters for a heavy player (common practice, no source).</summary>
public sealed class ContactLimitTests
{
    [Theory]
    [InlineData(null, 90, 100, "no experience")]
    [InlineData(1.0, 90, 100, "no experience")]
    [InlineData(1.5, 90, 120, "some experience")]
    [InlineData(3.0, 90, 140, "much experience")]
    [InlineData(3.0, 100, 140, "much experience")] // exactly 100 kg is not above it
    [InlineData(3.0, 100.1, 105, "much experience")]
    [InlineData(2.0, 140, 90, "some experience")]
    [InlineData(0.0, 140, 75, "no experience")]
    public void Limit_ByYearsAndBodyMass(double? years, double mass, int expected, string level)
    {
        var limit = ContactLimit.Of(Made.Player() with { TrainingYears = years, BodyMass = Mass.FromKilograms(mass) }, PlanRules.Standard);
        Assert.Equal((expected, level), (limit.Most, limit.Level));
    }

    [Fact]
    public void UnknownBodyMass_TakesTheCarefulSide() => Assert.Equal(105, ContactLimit.Of(Made.Player() with { BodyMass = null }, PlanRules.Standard).Most);

    [Fact]
    public void HeavyRuleOff_LowersNothing()
    {
        var heavy = Made.Player() with { BodyMass = Mass.FromKilograms(140) };
        Assert.All(new[] { RuleIds.HeavyPlayer, RuleIds.HeavyPlayerContacts }, id =>
            Assert.Equal(140, ContactLimit.Of(heavy, PlanRules.With([PlanRules.Standard[id] with { Handling = RuleHandling.Off }])).Most));
    }

    // 80 % of 140.
    [Fact]
    public void ShareOfTheGuide_Counts() => Assert.Equal(112, ContactLimit.Of(Made.Player(), PlanRules.With([PlanRules.Standard[RuleIds.JumpContacts] with { Value = 80 }])).Most);
}
