using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;

namespace Analytics.Planning.Solving;

/// <summary>Gives a unit in a session its choices. What a rule refuses whatever else is chosen is not offered, or hangs on the rule's switch.</summary>
internal static class DayChoices
{
    public static void Add(WeekModel week, UnitDay day, IReadOnlyList<Candidate> candidates)
    {
        foreach (var candidate in candidates)
        {
            var demand = day.Kind.Of(candidate.Exercise);
            // A kept choice that the kind of the day does not have is a clash to be named, or comes with a flag.
            var isOffKind = demand?.Takes(candidate.Scheme.MostPercent) != true;
            var kindRefuses = week.Problem.Rules.Refuses(RuleIds.DayDemands);
            if (isOffKind && !((week.Rules.Explain || !kindRefuses) && KeptConstraints.Names(week.Problem, day, candidate))) continue;

            var refused = StaticRules.Refusing(week.Problem, day, candidate).Concat(RestAround.Refusing(week, day, candidate)).ToList();
            if (isOffKind && week.Problem.Rules.IsOn(RuleIds.DayDemands)) refused.Add(DemandConstraints.Rule(day, demand, candidate.Exercise));
            var final = refused.Where(r => week.Problem.Rules.Refuses(r.RuleId)).ToList();
            if (final.Count > 0 && !week.Rules.Explain)
            {
                week.Excluded.AddRange(final.Select(r => new Exclusion(day, candidate, r)));
                continue;
            }

            var lacking = StaticRules.Lacking(week.Problem, day, candidate.Exercise).Count;
            var offered = week.Rules.Explain || !week.Problem.Rules.Refuses(RuleIds.Prerequisites);
            if (lacking == 0 || offered) AddShared(week, day, candidate, refused, lacking > 0);
            else week.Excluded.Add(new(day, candidate, StaticRules.PrerequisiteRule(candidate.Exercise)));
            // Who lacks what it asks is kept from it player by player; where all do, nobody is offered it.
            if ((demand is { IsOwnWork: true } || isOffKind) && (lacking < day.Unit.Players.Count || offered)) AddOwn(week, day, candidate, refused);
        }
    }

    private static void AddShared(WeekModel week, UnitDay day, Candidate candidate, List<RuleAtPlace> refused, bool lacks)
    {
        var chosen = week.Model.NewBoolVar($"s {day} {candidate.Exercise.Id} {candidate.Scheme.Id} {candidate.Partner?.Id}");
        day.Shared.Add(new(candidate, chosen));
        foreach (var rule in refused) week.Rules.Forbid(chosen, rule);
        if (lacks) week.Rules.Forbid(chosen, StaticRules.PrerequisiteRule(candidate.Exercise));
    }

    private static void AddOwn(WeekModel week, UnitDay day, Candidate candidate, List<RuleAtPlace> refused)
    {
        var chosen = week.Model.NewBoolVar($"o {day} {candidate.Exercise.Id} {candidate.Scheme.Id} {candidate.Partner?.Id}");
        if (!day.Own.TryGetValue(candidate.Exercise.Quality, out var choices)) day.Own[candidate.Exercise.Quality] = choices = [];
        choices.Add(new(candidate, chosen));
        foreach (var rule in refused) week.Rules.Forbid(chosen, rule);
    }
}
