using System.Globalization;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>Time between sessions with heavy lower-body work, and between sessions with jumps of high impact.</summary>
internal static class SpacingConstraints
{
    public static void Add(WeekModel week)
    {
        var rules = week.Problem.Rules;
        Space(week, RuleIds.HeavyLowerGap, "heavy lower-body work", c => c.IsHeavyLower(rules));
        Space(week, RuleIds.HighImpactGap, "jumps of high impact", c => c.IsHighImpact);
    }

    private static void Space(WeekModel week, string ruleId, string what, Func<Candidate, bool> counts)
    {
        var rules = week.Problem.Rules;
        if (!rules.IsOn(ruleId)) return;
        for (var u = 0; u < week.Units.Count; u++)
        {
            var has = new List<(UnitDay Day, BoolVar Has)>();
            foreach (var day in week.Of(u))
            {
                var choices = day.All.Where(c => counts(c.Candidate)).Select(c => c.Chosen).ToList();
                if (choices.Count > 0) has.Add((day, week.Touched(choices, $"{ruleId} {day}")));
            }

            for (var i = 0; i < has.Count; i++)
                for (var j = i + 1; j < has.Count; j++)
                    if (Hours.Between(has[i].Day.Slot, has[j].Day.Slot) < rules.Value(ruleId))
                        week.Rules.Hold(week.Model.Add(has[i].Has + has[j].Has <= 1), Rule(rules, ruleId, what, has[i].Day, has[j].Day));
        }
    }

    private static RuleAtPlace Rule(PlanRules rules, string ruleId, string what, UnitDay first, UnitDay second)
        => new(ruleId, $"{PlaceTexts.Session(first.Slot)} and {PlaceTexts.Session(second.Slot)}", string.Create(CultureInfo.InvariantCulture,
            $"{what} on {PlaceTexts.Session(first.Slot)} or on {PlaceTexts.Session(second.Slot)}, not on both: {rules.Value(ruleId):0} h between"));
}
