using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Quantities;

namespace Analytics.Planning.Dose;

/// <summary>How long a session takes one player.</summary>
public static class SessionTime
{
    /// <summary>Warm-up, the exercises, and a change from each to the next (one less than exercises). Worked out from exercises and schemes, not from the items' stated time.</summary>
    /// <param name="items">What he does, in order.</param>
    /// <param name="rules">Rules: minutes of warm-up and of a change.</param>
    public static Duration Of(IReadOnlyList<PlannedItem> items, PlanRules rules)
    {
        ArgumentNullException.ThrowIfNull(items);
        ArgumentNullException.ThrowIfNull(rules);
        double Minutes(string rule) => rules.IsOn(rule) ? rules.Value(rule) : 0;
        return Duration.FromMinutes(Minutes(RuleIds.WarmUpMinutes) + Math.Max(0, items.Count - 1) * Minutes(RuleIds.ChangeMinutes)
            + items.Sum(i => ExerciseTime.Of(i.Exercise, i.Scheme, i.Partner).Minutes));
    }
}
