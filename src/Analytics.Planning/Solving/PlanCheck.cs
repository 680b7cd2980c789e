using Analytics.Metrics.Strength;
using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Weeks;
using static System.FormattableString;

namespace Analytics.Planning.Solving;

/// <summary>
/// Checks a plan against every rule, player by player, from the plan alone: it knows nothing of the model that made it. What one thing counts is the same code as in
/// the search (contacts, hard sets, time, per cent and zones of an exercise; a player's limit of contacts; hours between two starts); what is added up over a session, a
/// day and the week, which sessions are compared, and who is at a station when, is worked out here anew.
/// </summary>
public static class PlanCheck
{
    /// <summary>Where a plan does not keep a rule, whatever is to happen then; rules that are off are not looked at.</summary>
    /// <param name="problem">What was planned from.</param>
    /// <param name="sessions">The plan.</param>
    public static IReadOnlyList<RuleFlag> Of(PlanProblem problem, IReadOnlyList<UnitSession> sessions)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(sessions);
        IEnumerable<RuleFlag> all = [.. sessions.SelectMany(s => OfSession(problem, s)), .. problem.Players.SelectMany(p => OfPlayer(problem, p, sessions)), .. StationCheck.Of(problem, sessions)];
        return [.. all.Where(f => problem.Rules.IsOn(f.RuleId)).Distinct()];
    }

    private static IEnumerable<RuleFlag> OfSession(PlanProblem problem, UnitSession session)
    {
        var where = $"{session.Group}, {PlaceTexts.Session(session.Slot)}";
        if (session.Minutes > session.Slot.Minutes + 1e-6)
            yield return new(RuleIds.SessionMinutes, where, Invariant($"{session.Minutes:0} minutes of {session.Slot.Minutes}"));
        foreach (var demand in session.Kind.Demands)
        {
            var count = session.Shared.Count(i => demand.Concerns(i.Exercise));
            if (count > demand.Most || count < demand.Least && !session.IsApart)
                yield return new(RuleIds.DayDemands, where, Invariant($"{count} of {demand.Quality.Name()}{(demand.Half == BodyHalf.Any ? "" : demand.Half == BodyHalf.Lower ? ", legs" : ", upper body")}, {demand.Least} to {demand.Most} asked"));
        }

        foreach (var item in session.Shared.Where(i => session.Kind.Of(i.Exercise) is null))
            yield return new(RuleIds.DayDemands, where, $"{item.Exercise.Name} is not of the day's kind");
        foreach (var item in session.Shared.Concat(session.Own.Select(o => o.Item)).Where(i => session.Kind.Of(i.Exercise)?.Takes(i.Scheme.MostPercent) == false))
            yield return new(RuleIds.DayDemands, where, Invariant($"{item.Exercise.Name} at {item.Scheme.MostPercent:0} % is not of the day's intensity"));
        foreach (var pattern in session.Shared.GroupBy(i => i.Exercise.Pattern).Where(g => g.Count() > problem.Rules.Value(RuleIds.PatternTimes)))
            yield return new(RuleIds.PatternTimes, where, Invariant($"{pattern.Count()} exercises of {pattern.Key.Name()}"));
        foreach (var item in session.Shared.Concat(session.Own.Select(o => o.Item)).Where(i => i.Exercise.Pattern == MovementPattern.Weightlifting))
            foreach (var zone in SetPercents.Of(item.Scheme, RepetitionTables.Textbook).Percent.GroupBy(ZoneGuide.At).Where(z => z.Count() * item.Scheme.Repetitions > z.Key.Most))
                yield return new(RuleIds.ZoneRepetitions, where, Invariant($"{item.Exercise.Name}: {zone.Count() * item.Scheme.Repetitions} repetitions, at most {zone.Key.Most} from {zone.Key.FromPercent:0} %"));
    }

    private static IEnumerable<RuleFlag> OfPlayer(PlanProblem problem, PlanPlayer player, IReadOnlyList<UnitSession> sessions)
    {
        var rules = problem.Rules;
        var heavy = rules.Value(RuleIds.HeavyPercent);
        var mine = sessions.Where(s => s.Players.Contains(player.Id)).Select(s => (Session: s, Items: s.For(player.Id))).ToList();
        foreach (var (session, items) in mine)
        {
            var where = $"{player.Name}, {PlaceTexts.Session(session.Slot)}";
            var contacts = items.Sum(i => i.Contacts);
            var limit = ContactLimit.Of(player, rules);
            if (contacts > limit.Most) yield return new(RuleIds.JumpContacts, where, Invariant($"{contacts} ground contacts, at most {limit.Most}"));
            foreach (var family in items.GroupBy(i => i.Exercise.Quality))
                if (family.Sum(i => DoseCount.ZoneParts(i.Exercise, i.Scheme)) is var parts && parts > ZoneGuide.Whole)
                    yield return new(RuleIds.ZoneRepetitions, where, Invariant($"{ZoneFamily.Name(family.Key)} take {100.0 * parts / ZoneGuide.Whole:0} % of the guide for one movement"));
            foreach (var exercise in items.SelectMany(i => i.Partner is null ? new[] { i.Exercise } : [i.Exercise, i.Partner]))
            {
                if (player.Restrictions.Any(r => r.Forbids(exercise, session.Slot.Date))) yield return new(RuleIds.Restrictions, where, $"{exercise.Name} is out for him");
                if (Prerequisite.Lacks(player, exercise, rules, session.Slot.Date) is { } lacks) yield return new(RuleIds.Prerequisites, where, $"{exercise.Name}: {lacks}");
            }

            if (items.Any(i => DoseCount.IsHeavy(i.Exercise, i.Scheme, heavy)) && problem.Games.FirstOrDefault(g => Hours.Between(session.Slot, g) < rules.Value(RuleIds.GameGap)) is { } game)
                yield return new(RuleIds.GameGap, where, $"heavy work near the game on {PlaceTexts.Day(game.Date)}");
            if (!items.Select(i => i.Exercise.Quality.PartOfSession()).SequenceEqual(items.Select(i => i.Exercise.Quality.PartOfSession()).Order()))
                yield return new(RuleIds.SessionOrder, where, "jumps and sprints after heavier work");
        }

        foreach (var day in mine.GroupBy(m => m.Session.Slot.Date).Where(d => d.Count() > 1))
            if (day.SelectMany(m => m.Items).Sum(i => i.Contacts) is var landings && ContactLimit.Of(player, rules).Most is var allowed && landings > allowed)
                yield return new(RuleIds.JumpContacts, $"{player.Name}, {PlaceTexts.Day(day.Key)}", Invariant($"{landings} ground contacts in {day.Count()} sessions of the day, at most {allowed}"));

        foreach (var flag in Gaps(problem, RuleIds.HeavyLowerGap, player, mine, i => i.Exercise.Pattern.IsLowerBody() && DoseCount.IsHeavy(i.Exercise, i.Scheme, heavy), w => w.IsHeavyLower)) yield return flag;
        foreach (var flag in Gaps(problem, RuleIds.HighImpactGap, player, mine, i => i.Exercise.Impact == Impact.High || i.Partner?.Impact == Impact.High, w => w.IsHighImpact)) yield return flag;
        foreach (var exercise in mine.SelectMany(m => m.Items).GroupBy(i => i.Exercise.Id).Where(g => g.Count() > rules.Value(RuleIds.ExerciseTimes)))
            yield return new(RuleIds.ExerciseTimes, player.Name, Invariant($"{exercise.First().Exercise.Name} {exercise.Count()} times"));
        foreach (var pattern in mine.SelectMany(m => m.Items).GroupBy(i => i.Exercise.Pattern))
            if (pattern.Sum(i => DoseCount.HardSets(i.Exercise, i.Scheme, heavy)) is var sets && sets > rules.Value(RuleIds.HardSets))
                yield return new(RuleIds.HardSets, player.Name, Invariant($"{sets} hard sets of {pattern.Key.Name()}, at most {rules.Value(RuleIds.HardSets):0}"));
    }

    private static IEnumerable<RuleFlag> Gaps(PlanProblem problem, string ruleId, PlanPlayer player, List<(UnitSession Session, IReadOnlyList<PlannedItem> Items)> mine, Func<PlannedItem, bool> counts, Func<WorkAround, bool> countsAround)
    {
        var rules = problem.Rules;
        var with = mine.Where(m => m.Items.Any(counts)).Select(m => m.Session.Slot).ToList();
        foreach (var around in WorkAround.Of(problem).Where(w => countsAround(w) && (w.Row.AthleteId ?? player.Id) == player.Id && (w.Row.Group ?? player.Group) == player.Group))
            foreach (var slot in with)
                if (Hours.Between(slot.Date, slot.Start, around.Row.Date, around.Start) is var apart && apart < rules.Value(ruleId))
                    yield return new(ruleId, player.Name, Invariant($"{PlaceTexts.Session(slot)} and what was planned on {PlaceTexts.Day(around.Row.Date)} are {apart:0} h apart, {rules.Value(ruleId):0} h asked"));
        for (var i = 0; i < with.Count; i++)
            for (var j = i + 1; j < with.Count; j++)
                if (Hours.Between(with[i], with[j]) is var hours && hours < rules.Value(ruleId))
                    yield return new(ruleId, player.Name, Invariant($"{PlaceTexts.Session(with[i])} and {PlaceTexts.Session(with[j])} are {hours:0} h apart, {rules.Value(ruleId):0} h asked"));
    }
}
