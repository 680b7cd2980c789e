using System.Globalization;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Weeks;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>What the kind of a day asks for, and how often an exercise or a pattern comes.</summary>
internal static class DemandConstraints
{
    /// <summary>The rule of a demand; where there is none, that the day has nothing like the exercise.</summary>
    public static RuleAtPlace Rule(UnitDay day, DayDemand? demand, Exercise exercise)
        => demand is null ? new(RuleIds.DayDemands, $"{PlaceTexts.Session(day.Slot)}, {exercise.Name}", $"{exercise.Name} is not part of {day.Kind.Described} ({PlaceTexts.Session(day.Slot)})") : Rule(day, demand);

    public static void Add(WeekModel week)
    {
        var rules = week.Problem.Rules;
        foreach (var day in week.Days)
        {
            foreach (var demand in day.Kind.Demands) Demand(week, day, demand);
            if (rules.IsOn(RuleIds.PatternTimes)) Patterns(week, day, (long)rules.Value(RuleIds.PatternTimes));
            foreach (var exercise in day.Shared.GroupBy(c => c.Candidate.Exercise.Id)) week.Model.AddAtMostOne(exercise.Select(c => c.Chosen));
        }

        if (!rules.IsOn(RuleIds.ExerciseTimes)) return;
        var times = (long)rules.Value(RuleIds.ExerciseTimes);
        for (var u = 0; u < week.Units.Count; u++)
            foreach (var exercise in week.Of(u).SelectMany(d => d.All).GroupBy(c => c.Candidate.Exercise.Id))
                week.Rules.Hold(week.Model.Add(LinearExpr.Sum(exercise.Select(c => c.Chosen)) <= times), new(RuleIds.ExerciseTimes, "the week",
                    string.Create(CultureInfo.InvariantCulture, $"one exercise at most {times} times a week")));
    }

    private static void Patterns(WeekModel week, UnitDay day, long most)
    {
        foreach (var pattern in day.Shared.GroupBy(c => c.Candidate.Exercise.Pattern))
            week.Rules.Hold(week.Model.Add(LinearExpr.Sum(pattern.Select(c => c.Chosen)) <= most), new(RuleIds.PatternTimes, PlaceTexts.Session(day.Slot),
                string.Create(CultureInfo.InvariantCulture, $"at most {most} exercises of one pattern on {PlaceTexts.Session(day.Slot)}")));
    }

    private static void Demand(WeekModel week, UnitDay day, DayDemand demand)
    {
        List<BoolVar> chosen = [.. day.Shared.Where(c => demand.Concerns(c.Candidate.Exercise)).Select(c => c.Chosen)];
        var sum = LinearExpr.Sum(chosen);
        if (!week.Problem.Rules.IsOn(RuleIds.DayDemands))
        {
            // Without the rule a day may hold less than its kind asks for, never more.
            if (chosen.Count > 0) week.Model.Add(sum <= demand.Most);
            return;
        }

        var rule = Rule(day, demand);
        if (chosen.Count > 0) week.Rules.Hold(week.Model.Add(sum <= demand.Most), rule);
        if (Excuses.Least(week.Problem, day, demand) is > 0 and var least) week.Rules.Hold(week.Model.Add(sum >= least), rule);
    }

    private static RuleAtPlace Rule(UnitDay day, DayDemand demand)
        => new(RuleIds.DayDemands, $"{PlaceTexts.Session(day.Slot)}, {demand.What}",
            $"{day.Kind.Name} on {PlaceTexts.Session(day.Slot)} has {demand.Count} of {demand.What}{(demand.Intensity.Length > 0 ? ", " + demand.Intensity : "")}");
}
