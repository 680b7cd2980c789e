using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>
/// Puts constraints into a model under the rule they come from. For planning, a rule that refuses simply holds, and one that is only flagged has a switch
/// that the objective likes to be on. For finding a clash each rule at each place has a switch, and the solver is asked which cannot all be on.
/// </summary>
internal sealed class RuleSwitches(CpModel model, PlanRules rules, bool explain)
{
    private readonly Dictionary<(string Rule, string Subject), BoolVar> switches = [];
    private readonly List<RuleAtPlace> met = [];

    /// <summary>Whether rules that refuse have switches.</summary>
    public bool Explain => explain;

    /// <summary>The rules with a switch that refuse, in the order met.</summary>
    public IEnumerable<RuleAtPlace> Refusing => met.Where(r => rules.Refuses(r.RuleId));

    /// <summary>Switches of the rules that are only flagged.</summary>
    public IEnumerable<BoolVar> Flagged => met.Where(r => !rules.Refuses(r.RuleId)).Select(Switch);

    /// <summary>The switch of a rule met.</summary>
    public BoolVar Switch(RuleAtPlace rule) => switches[(rule.RuleId, rule.Subject)];

    /// <summary>A linear constraint that holds while the rule does.</summary>
    public void Hold(Constraint constraint, RuleAtPlace rule)
    {
        if (explain || !rules.Refuses(rule.RuleId)) constraint.OnlyEnforceIf(Get(rule));
    }

    /// <summary>Something that must not be chosen while the rule holds.</summary>
    public void Forbid(BoolVar chosen, RuleAtPlace rule) => Hold(model.Add(chosen == 0), rule);

    private BoolVar Get(RuleAtPlace rule)
    {
        var key = (rule.RuleId, rule.Subject);
        if (switches.TryGetValue(key, out var known)) return known;
        met.Add(rule);
        return switches[key] = model.NewBoolVar($"{rule.RuleId} | {rule.Subject}");
    }
}
