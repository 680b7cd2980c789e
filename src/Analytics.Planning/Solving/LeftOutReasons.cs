using System.Globalization;
using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;

namespace Analytics.Planning.Solving;

/// <summary>What a rule kept out of the whole week of a group, in words: an exercise that no session of it could take.</summary>
internal static class LeftOutReasons
{
    public static IReadOnlyList<LeftOut> Of(WeekModel week)
    {
        var list = new List<LeftOut>();
        foreach (var unit in week.Excluded.GroupBy(e => e.Day.UnitIndex))
        {
            var offered = week.Of(unit.Key).SelectMany(d => d.All).Select(c => c.Candidate.Exercise.Id).ToHashSet(StringComparer.Ordinal);
            foreach (var exercise in unit.GroupBy(e => e.Candidate.Exercise.Id).Where(g => !offered.Contains(g.Key)))
                list.Add(new(week.Units[unit.Key].Label, exercise.First().Candidate.Exercise.Name, Reason(week, exercise.First().Day, exercise.Select(e => e.Rule).ToList(), exercise.First().Candidate.Exercise)));
        }

        return list;
    }

    private static string Reason(WeekModel week, UnitDay day, List<RuleAtPlace> rules, Exercise exercise)
    {
        if (rules.TrueForAll(r => r.RuleId == RuleIds.Prerequisites))
        {
            var lacking = StaticRules.Lacking(week.Problem, day, exercise);
            return string.Create(CultureInfo.InvariantCulture, $"{lacking.Count} of {day.Unit.Players.Count} lack what it asks ({Prerequisite.Lacks(lacking[0], exercise, week.Problem.Rules, day.Slot.Date)})");
        }

        return string.Join("; ", rules.Select(r => r.Text).Distinct().Take(2));
    }
}
