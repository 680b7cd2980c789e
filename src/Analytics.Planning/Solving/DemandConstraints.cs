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
    public static RuleAtPlace Rule(UnitDay day, TrainedQuality quality)
    {
        var demand = day.Kind.Of(quality);
        return new(RuleIds.DayDemands, $"{PlaceTexts.Session(day.Slot)}, {quality.Name()}", demand is null
            ? $"{day.Kind.Name} on {PlaceTexts.Session(day.Slot)} has no {quality.Name()}"
            : string.Create(CultureInfo.InvariantCulture, $"{day.Kind.Name} on {PlaceTexts.Session(day.Slot)} has {Count(demand)} of {quality.Name()}{Details(demand)}"));
    }

    private static string Count(DayDemand demand)
        => demand.Least == demand.Most ? string.Create(CultureInfo.InvariantCulture, $"{demand.Most} {(demand.Most == 1 ? "exercise" : "exercises")}")
            : string.Create(CultureInfo.InvariantCulture, $"{demand.Least} to {demand.Most} exercises");

    private static string Details(DayDemand demand) => string.Concat(
        demand.LeastLower > 0 ? string.Create(CultureInfo.InvariantCulture, $", {demand.LeastLower} for the legs") : "",
        demand.LeastUpper > 0 ? string.Create(CultureInfo.InvariantCulture, $", {demand.LeastUpper} for the arms") : "",
        demand.LeastPercent is { } least ? string.Create(CultureInfo.InvariantCulture, $", from {least:0} % of 1RM") : "",
        demand.MostPercent is { } most ? string.Create(CultureInfo.InvariantCulture, $", up to {most:0} % of 1RM") : "");

    public static void Add(WeekModel week)
    {
        var rules = week.Problem.Rules;
        foreach (var day in week.Days)
        {
            foreach (var quality in TrainedQualities.All) Demand(week, day, quality);
            if (rules.Refuses(RuleIds.PatternTimes))
            {
                var most = (long)rules.Value(RuleIds.PatternTimes);
                foreach (var pattern in day.Shared.GroupBy(c => c.Candidate.Exercise.Pattern))
                    week.Rules.Hold(week.Model.Add(LinearExpr.Sum(pattern.Select(c => c.Chosen)) <= most), new(RuleIds.PatternTimes, PlaceTexts.Session(day.Slot),
                        string.Create(CultureInfo.InvariantCulture, $"at most {most} exercises of one pattern on {PlaceTexts.Session(day.Slot)}")));
            }

            foreach (var exercise in day.Shared.GroupBy(c => c.Candidate.Exercise.Id)) week.Model.AddAtMostOne(exercise.Select(c => c.Chosen));
        }

        if (!rules.Refuses(RuleIds.ExerciseTimes)) return;
        var times = (long)rules.Value(RuleIds.ExerciseTimes);
        for (var u = 0; u < week.Units.Count; u++)
            foreach (var exercise in week.Of(u).SelectMany(d => d.All).GroupBy(c => c.Candidate.Exercise.Id))
                week.Rules.Hold(week.Model.Add(LinearExpr.Sum(exercise.Select(c => c.Chosen)) <= times), new(RuleIds.ExerciseTimes, "the week",
                    string.Create(CultureInfo.InvariantCulture, $"one exercise at most {times} times a week")));
    }

    private static void Demand(WeekModel week, UnitDay day, TrainedQuality quality)
    {
        var rules = week.Problem.Rules;
        var chosen = day.Shared.Where(c => c.Candidate.Exercise.Quality == quality).Select(c => c.Chosen).ToList();
        var demand = day.Kind.Of(quality);
        var sum = LinearExpr.Sum(chosen);
        if (!rules.Refuses(RuleIds.DayDemands))
        {
            // Without the rule a day may hold less than its kind asks for, never more.
            if (chosen.Count > 0) week.Model.Add(sum <= (demand?.Most ?? 0));
            return;
        }

        if (demand is null && chosen.Count == 0) return;
        var rule = Rule(day, quality);
        if (chosen.Count > 0) week.Rules.Hold(week.Model.Add(sum <= (demand?.Most ?? 0)), rule);
        if (demand is null) return;
        AtLeast(week, day, rule, e => e.Quality == quality, demand.Least);
        AtLeast(week, day, rule, e => e.Quality == quality && e.Pattern.IsLowerBody(), demand.LeastLower);
        AtLeast(week, day, rule, e => e.Quality == quality && !e.Pattern.IsLowerBody(), demand.LeastUpper);
    }

    private static void AtLeast(WeekModel week, UnitDay day, RuleAtPlace rule, Func<Exercise, bool> counts, int asked)
    {
        if (Excuses.Least(week.Problem, day, counts, asked) is not (> 0 and var least)) return;
        week.Rules.Hold(week.Model.Add(LinearExpr.Sum(day.Shared.Where(c => counts(c.Candidate.Exercise)).Select(c => c.Chosen)) >= least), rule);
    }
}
