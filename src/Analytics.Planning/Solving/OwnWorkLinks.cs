using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>Own work: one quality is the unit's default, players with a need may take another; a quality taken has one exercise.</summary>
internal static class OwnWorkLinks
{
    public static void Add(WeekModel week)
    {
        foreach (var day in week.Days.Where(d => d.Own.Count > 0)) Link(week, day);
    }

    private static void Link(WeekModel week, UnitDay day)
    {
        var model = week.Model;
        day.HasOwn = model.NewBoolVar($"own {day}");
        foreach (var quality in day.Own.Keys)
        {
            day.Default[quality] = model.NewBoolVar($"default {day} {quality}");
            day.Taken[quality] = model.NewBoolVar($"taken {day} {quality}");
        }

        foreach (var player in day.Unit.Players.Where(p => MayDiffer(week.Problem, day, p)))
        {
            var own = day.OwnOf[player.Id] = [];
            foreach (var quality in day.Own.Keys) own[quality] = model.NewBoolVar($"own {day} {player.Id} {quality}");
            model.Add(LinearExpr.Sum(own.Values) == day.HasOwn);
        }

        var anyDefault = day.OwnOf.Count < day.Unit.Players.Count;
        model.Add(LinearExpr.Sum(day.Default.Values) == (anyDefault ? day.HasOwn : LinearExpr.Constant(0)));
        foreach (var (quality, choices) in day.Own)
        {
            List<BoolVar> takers = [day.Default[quality], .. day.OwnOf.Values.Select(o => o[quality])];
            model.AddMaxEquality(day.Taken[quality], takers);
            model.Add(LinearExpr.Sum(choices.Select(c => c.Chosen)) == day.Taken[quality]);
            foreach (var choice in choices)
            {
                var lacking = StaticRules.Lacking(week.Problem, day, choice.Candidate.Exercise);
                if (lacking.Count == 0) continue;
                var rule = StaticRules.PrerequisiteRule(choice.Candidate.Exercise);
                foreach (var player in lacking.Where(p => day.OwnOf.ContainsKey(p.Id)))
                    week.Rules.Hold(model.Add(day.OwnOf[player.Id][quality] + choice.Chosen <= 1), rule);
                if (lacking.Any(p => !day.OwnOf.ContainsKey(p.Id))) week.Rules.Hold(model.Add(day.Default[quality] + choice.Chosen <= 1), rule);
            }
        }

        // Nothing comes twice in a session, shared and as own work.
        foreach (var exercise in day.All.GroupBy(c => c.Candidate.Exercise.Id).Where(g => g.Count() > 1))
            model.AddAtMostOne(exercise.Select(c => c.Chosen));
    }

    private static bool MayDiffer(PlanProblem problem, UnitDay day, PlanPlayer player)
        => player.Needs.Any(n => n.IsNeed && day.Own.ContainsKey(n.Quality))
            || problem.Earlier.Any(e => e.AthleteId == player.Id && e.IsOwnWork && e.Force != ChoiceForce.Never && EarlierRows.IsAbout(problem, e, day.Slot, day.Unit.Group));
}
