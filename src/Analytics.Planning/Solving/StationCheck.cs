using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Weeks;
using static System.FormattableString;

namespace Analytics.Planning.Solving;

/// <summary>
/// Players at the stations of a plan, counted for <see cref="PlanCheck"/> on one line of minutes through the week. The search counts by dates and times of its own
/// (<see cref="StationConstraints"/>, <see cref="StationUse"/>); an error in one shows in the other.
/// </summary>
internal static class StationCheck
{
    private const int MinutesOfDay = 24 * 60;

    /// <summary>Where more players are at a station than it has room for.</summary>
    /// <param name="problem">What was planned from.</param>
    /// <param name="sessions">The plan.</param>
    public static IEnumerable<RuleFlag> Of(PlanProblem problem, IReadOnlyList<UnitSession> sessions)
    {
        var perPlace = (int)problem.Rules.Value(RuleIds.PlayersPerPlace);
        foreach (var slot in sessions.Select(s => s.Slot).Distinct())
        {
            var places = problem.Rooms.FirstOrDefault(r => r.Id == slot.Room);
            var there = sessions.Where(s => s.Slot.Room == slot.Room && IsThere(problem.Monday, s.Slot, slot)).ToList();
            foreach (var (station, part) in there.SelectMany(Uses).Distinct())
            {
                var players = there.Where(s => Uses(s).Contains((station, part))).Sum(s => s.Players.Count);
                var room = (places?.Places(station) ?? 0) * perPlace;
                if (players > room) yield return new(RuleIds.StationPlaces, PlaceTexts.Session(slot), Invariant($"{players} players at the {station}, room for {room}"));
            }
        }
    }

    // Half open: who leaves at 17:00 is gone for those who begin at 17:00. Where one has no start, all of that day are together.
    private static bool IsThere(DateOnly monday, SessionSlot session, SessionSlot begins)
    {
        if (Minute(monday, begins) is not { } now || Minute(monday, session) is not { } from) return session.Date == begins.Date;
        return now - from is var since && since >= 0 && since < session.Minutes;
    }

    /// <summary>Minutes from Monday 00:00 to its start; null without a start.</summary>
    private static double? Minute(DateOnly monday, SessionSlot slot)
        => slot.Start is { } start ? (slot.Date.DayNumber - monday.DayNumber) * MinutesOfDay + start.Hour * 60 + start.Minute + start.Second / 60.0 : null;

    private static List<(string Station, int Part)> Uses(UnitSession session)
    {
        var uses = new List<(string, int)>();
        foreach (var item in session.Shared.Concat(session.Own.Select(o => o.Item)))
            foreach (var station in item.Partner is null ? item.Exercise.Stations : [.. item.Exercise.Stations, .. item.Partner.Stations])
                if (!uses.Contains((station, item.Exercise.Quality.PartOfSession()))) uses.Add((station, item.Exercise.Quality.PartOfSession()));
        return uses;
    }
}
