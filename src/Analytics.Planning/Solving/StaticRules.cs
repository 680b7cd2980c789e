using System.Globalization;
using Analytics.Metrics.Strength;
using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Rules;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Solving;

/// <summary>Rules that refuse an exercise for a unit in a session whatever else is chosen.</summary>
internal static class StaticRules
{
    public static IEnumerable<RuleAtPlace> Refusing(PlanProblem problem, UnitDay day, Candidate candidate)
    {
        var rules = problem.Rules;
        foreach (var restriction in day.Unit.Players.SelectMany(p => p.Restrictions.Where(r => candidate.Exercises.Any(e => r.Forbids(e, day.Slot.Date)))
                     .Select(r => RestrictionRule(p, r))).Distinct())
            yield return restriction;

        if (rules.IsOn(RuleIds.StationPlaces))
        {
            var room = RoomOf(problem, day.Slot);
            foreach (var station in candidate.Stations.Where(s => (room?.Places(s) ?? 0) == 0)) yield return StationRule(rules, day.Slot, station, room);
        }

        if (rules.IsOn(RuleIds.GameGap) && candidate.IsHeavy(rules) && NearGame(problem, day.Slot) is { } game) yield return GameRule(problem, day.Slot, game);
        if (rules.IsOn(RuleIds.ZoneRepetitions) && ZoneExcess(candidate) is { } excess)
            yield return new(RuleIds.ZoneRepetitions, candidate.Exercise.Name, $"{candidate.Exercise.Name}: {excess}");
        foreach (var never in problem.Earlier.Where(e => e.Force == ChoiceForce.Never && KeptConstraints.Matches(problem, e, day, candidate) && KeptConstraints.IsFor(e, day)))
            yield return KeptConstraints.Rule(problem, never);
    }

    /// <summary>Players of the unit who lack what an exercise asks for.</summary>
    public static IReadOnlyList<PlanPlayer> Lacking(PlanProblem problem, UnitDay day, Exercise exercise)
        => problem.Rules.IsOn(RuleIds.Prerequisites) ? [.. day.Unit.Players.Where(p => Prerequisite.Lacks(p, exercise, problem.Rules, day.Slot.Date) is not null)] : [];

    public static RuleAtPlace PrerequisiteRule(Exercise exercise) => new(RuleIds.Prerequisites, exercise.Name, $"what {exercise.Name} asks of a player");

    public static RuleAtPlace StationRule(PlanRules rules, SessionSlot slot, string station, Room? room)
        => new(RuleIds.StationPlaces, $"{PlaceTexts.Session(slot)}, {station}", room is null
            ? $"no room with a {station} on {PlaceTexts.Session(slot)}"
            : room.Places(station) == 0 ? $"{room.Id} has no place at the {station} on {PlaceTexts.Session(slot)}"
            : string.Create(CultureInfo.InvariantCulture, $"{room.Id} has {room.Places(station)} {(room.Places(station) == 1 ? "place" : "places")} at the {station} on {PlaceTexts.Session(slot)}, room for {room.Places(station) * rules.Value(RuleIds.PlayersPerPlace):0} players at once"));

    public static Room? RoomOf(PlanProblem problem, SessionSlot slot) => problem.Rooms.FirstOrDefault(r => r.Id == slot.Room);

    private static Game? NearGame(PlanProblem problem, SessionSlot slot)
        => problem.Games.FirstOrDefault(g => Hours.Between(slot, g) < problem.Rules.Value(RuleIds.GameGap));

    private static RuleAtPlace GameRule(PlanProblem problem, SessionSlot slot, Game game)
        => new(RuleIds.GameGap, PlaceTexts.Session(slot), string.Create(CultureInfo.InvariantCulture,
            $"nothing heavy on {PlaceTexts.Session(slot)}, within {problem.Rules.Value(RuleIds.GameGap):0} h of the game on {PlaceTexts.Day(game.Date)}"));

    private static RuleAtPlace RestrictionRule(PlanPlayer player, Restriction restriction)
    {
        var what = restriction.IsEverything ? "everything" : restriction.ExerciseId ?? restriction.Pattern?.Name() ?? restriction.Quality!.Value.Name();
        return new(RuleIds.Restrictions, $"{player.Name}, {what}", $"{player.Name} may not do: {what}");
    }

    private static string? ZoneExcess(Candidate candidate)
    {
        if (candidate.Exercise.Pattern != MovementPattern.Weightlifting) return null;
        var loads = SetPercents.Of(candidate.Scheme, RepetitionTables.Textbook).Percent;
        foreach (var zone in loads.GroupBy(ZoneGuide.At))
        {
            var repetitions = zone.Count() * candidate.Scheme.Repetitions;
            if (repetitions > zone.Key.Most) return string.Create(CultureInfo.InvariantCulture, $"{repetitions} repetitions, at most {zone.Key.Most} from {zone.Key.FromPercent:0} %");
        }

        return null;
    }
}
