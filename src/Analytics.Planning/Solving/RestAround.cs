using System.Globalization;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;

namespace Analytics.Planning.Solving;

/// <summary>Choices that come too soon after, or before, what an earlier plan has for a day outside the week.</summary>
internal static class RestAround
{
    public static IEnumerable<RuleAtPlace> Refusing(WeekModel week, UnitDay day, Candidate candidate)
    {
        var rules = week.Problem.Rules;
        if (candidate.IsHeavyLower(rules) && Near(week, day, RuleIds.HeavyLowerGap, w => w.IsHeavyLower) is { } heavy) yield return Rule(rules, RuleIds.HeavyLowerGap, "heavy lower-body work", day, heavy);
        if (candidate.IsHighImpact && Near(week, day, RuleIds.HighImpactGap, w => w.IsHighImpact) is { } impact) yield return Rule(rules, RuleIds.HighImpactGap, "jumps of high impact", day, impact);
    }

    private static WorkAround? Near(WeekModel week, UnitDay day, string ruleId, Func<WorkAround, bool> counts)
        => !week.Problem.Rules.IsOn(ruleId) ? null : week.Around.FirstOrDefault(w => counts(w) && w.Concerns(day.Unit.Group, day.Unit.Players.Select(p => p.Id))
            && Hours.Between(day.Slot.Date, day.Slot.Start, w.Row.Date, w.Start) < week.Problem.Rules.Value(ruleId));

    private static RuleAtPlace Rule(PlanRules rules, string ruleId, string what, UnitDay day, WorkAround around)
        => new(ruleId, $"{PlaceTexts.Session(day.Slot)} and {PlaceTexts.Day(around.Row.Date)}", string.Create(CultureInfo.InvariantCulture,
            $"no {what} on {PlaceTexts.Session(day.Slot)}: {rules.Value(ruleId):0} h from that planned on {PlaceTexts.Day(around.Row.Date)}{(around.Row.Place.Length > 0 ? $" ({around.Row.Place})" : "")}"));
}
