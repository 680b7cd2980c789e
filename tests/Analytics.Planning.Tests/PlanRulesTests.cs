using Analytics.Planning.Rules;

namespace Analytics.Planning.Tests;

/// <summary>Rules by identifier, and their changes.</summary>
public class PlanRulesTests
{
    [Fact]
    public void Standard_EveryIdentifier_HasARule()
    {
        var ids = typeof(RuleIds).GetFields().Select(f => (string)f.GetRawConstantValue()!).Order(StringComparer.Ordinal);
        Assert.Equal(ids, PlanRules.Standard.All.Select(r => r.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Standard_EveryRule_NamesItsSource() => Assert.DoesNotContain(PlanRules.Standard.All, r => string.IsNullOrWhiteSpace(r.Source));

    [Fact]
    public void With_AChangedRule_LeavesTheOthers()
    {
        var changed = PlanRules.With([PlanRules.Standard[RuleIds.HardSets] with { Value = 8, Handling = RuleHandling.Flag }]);
        Assert.Equal(8, changed.Value(RuleIds.HardSets));
        Assert.False(changed.Refuses(RuleIds.HardSets));
        Assert.Equal(48, changed.Value(RuleIds.HeavyLowerGap));
        Assert.Equal(12, PlanRules.Standard.Value(RuleIds.HardSets));
    }

    [Fact]
    public void With_AnUnknownRule_IsRefused()
        => Assert.Contains("hard_sets", Assert.Throws<ArgumentException>(() => PlanRules.With([new PlanRule("hard_set", "", 1, "", RuleHandling.Flag, "")])).Message, StringComparison.Ordinal);
}
