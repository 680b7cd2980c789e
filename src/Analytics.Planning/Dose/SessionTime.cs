using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Quantities;

namespace Analytics.Planning.Dose;

/// <summary>How long a session takes.</summary>
public static class SessionTime
{
    /// <summary>Warm-up, the exercises, and a change to each of them. Worked out from exercises and schemes, not from the items' stated time.</summary>
    /// <param name="items">What a player does, in order.</param>
    /// <param name="rules">Rules: minutes of warm-up and of a change; a rule that is off counts none.</param>
    public static Duration Of(IReadOnlyList<PlannedItem> items, PlanRules rules)
    {
        ArgumentNullException.ThrowIfNull(items);
        ArgumentNullException.ThrowIfNull(rules);
        return Duration.FromMinutes(rules.Minutes(RuleIds.WarmUpMinutes) + items.Sum(i => rules.Minutes(RuleIds.ChangeMinutes) + Time(i)));
    }

    /// <summary>The time of players who train together: the shared part and the longest own work.</summary>
    /// <param name="shared">What all do.</param>
    /// <param name="own">Own work; each player does one of it.</param>
    /// <param name="rules">Rules: minutes of warm-up and of a change; a rule that is off counts none.</param>
    public static Duration Of(IReadOnlyList<PlannedItem> shared, IReadOnlyList<PlannedItem> own, PlanRules rules)
    {
        ArgumentNullException.ThrowIfNull(shared);
        ArgumentNullException.ThrowIfNull(own);
        return Of(own.Count == 0 ? shared : [.. shared, own.MaxBy(Time)!], rules);
    }

    private static double Time(PlannedItem item) => ExerciseTime.Of(item.Exercise, item.Scheme, item.Partner).Minutes;
}
