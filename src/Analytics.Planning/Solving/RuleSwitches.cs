using Analytics.Planning.Plans;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>
/// Puts constraints into a model under the rule they come from. For planning they simply hold. For finding a clash each rule at each place has a
/// switch, and the solver is asked which switches cannot all be on.
/// </summary>
internal sealed class RuleSwitches(CpModel model, bool explain)
{
    private readonly Dictionary<(string Rule, string Subject), BoolVar> switches = [];
    private readonly List<RuleAtPlace> rules = [];

    /// <summary>Whether rules have switches.</summary>
    public bool Explain => explain;

    /// <summary>The rules met, in the order met.</summary>
    public IReadOnlyList<RuleAtPlace> Rules => rules;

    /// <summary>The switch of a rule met.</summary>
    public BoolVar Switch(RuleAtPlace rule) => switches[(rule.RuleId, rule.Subject)];

    /// <summary>A constraint that holds while the rule does.</summary>
    public void Hold(Constraint constraint, RuleAtPlace rule)
    {
        if (explain) constraint.OnlyEnforceIf(Get(rule));
    }

    /// <summary>Something that must not be chosen while the rule holds.</summary>
    public void Forbid(BoolVar chosen, RuleAtPlace rule) => Hold(model.Add(chosen == 0), rule);

    private BoolVar Get(RuleAtPlace rule)
    {
        var key = (rule.RuleId, rule.Subject);
        if (switches.TryGetValue(key, out var known)) return known;
        rules.Add(rule);
        return switches[key] = model.NewBoolVar($"{rule.RuleId} | {rule.Subject}");
    }
}
