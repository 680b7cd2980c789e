using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Solving;

/// <summary>Players at a station in one part of overlapping sessions, as the search counts them.</summary>
/// <param name="Slot">Session at whose start is counted.</param>
/// <param name="Station">Station.</param>
/// <param name="Players">Players there.</param>
/// <param name="Room">Players it has room for.</param>
internal sealed record StationUse(SessionSlot Slot, string Station, int Players, int Room)
{
    /// <summary>Whether all players find a place, or nobody minds.</summary>
    public static bool Fits(PlanProblem problem, IReadOnlyList<UnitSession> sessions)
        => !problem.Rules.Refuses(RuleIds.StationPlaces) || Of(problem, sessions).All(u => u.Players <= u.Room);

    /// <summary>All uses of a plan.</summary>
    public static IEnumerable<StationUse> Of(PlanProblem problem, IReadOnlyList<UnitSession> sessions)
    {
        var perPlace = (int)problem.Rules.Value(RuleIds.PlayersPerPlace);
        foreach (var slot in sessions.Select(s => s.Slot).Distinct())
        {
            var room = problem.Rooms.FirstOrDefault(r => r.Id == slot.Room);
            var uses = sessions.Where(s => StationConstraints.AtOnce(s.Slot, slot)).SelectMany(s => PlacesOf(s).Select(u => (u.Station, u.Part, s.Players.Count)));
            foreach (var use in uses.GroupBy(u => (u.Station, u.Part)))
                yield return new(slot, use.Key.Station, use.Sum(u => u.Count), (room?.Places(use.Key.Station) ?? 0) * perPlace);
        }
    }

    /// <summary>Players of a plan at a station in a part of what goes on when a session begins.</summary>
    public static int Taken(IEnumerable<UnitSession> sessions, SessionSlot slot, string station, int part)
        => sessions.Where(s => StationConstraints.AtOnce(s.Slot, slot) && PlacesOf(s).Contains((station, part))).Sum(s => s.Players.Count);

    private static IEnumerable<(string Station, int Part)> PlacesOf(UnitSession session)
        => session.Shared.Concat(session.Own.Select(o => o.Item))
            .SelectMany(i => i.Exercise.Stations.Union(i.Partner?.Stations ?? []).Select(t => (t, i.Exercise.Quality.PartOfSession()))).Distinct();
}
