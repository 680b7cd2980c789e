using Analytics.Metrics.Strength;
using Analytics.Planning.Exercises;
using Analytics.Planning.Rules;

namespace Analytics.Planning.Dose;

/// <summary>Lines of the week.</summary>
internal static class WeekDose
{
    public static IEnumerable<DoseLine> HardSets(IReadOnlyList<PlayerSession> sessions, PlanRules rules, RepetitionTable table)
        => sessions.SelectMany(s => s.Items)
            .GroupBy(i => i.Exercise.Pattern, i => DoseCount.HardSets(i.Exercise, i.Scheme, rules.Value(RuleIds.HeavyPercent), table))
            .Where(g => g.Sum() > 0).OrderBy(g => g.Key)
            .Select(g => new DoseLine
            {
                RuleId = RuleIds.HardSets,
                Subject = g.Key.Name(),
                What = "hard sets in the week",
                Amount = g.Sum(),
                Unit = "sets",
                Limit = rules.IsOn(RuleIds.HardSets) ? rules.Value(RuleIds.HardSets) : null,
                Source = rules[RuleIds.HardSets].Source,
            });
}
