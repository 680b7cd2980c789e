using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Weeks;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>
/// No more players at a station than it has places for. All groups go through the parts of a session in step, so those who use a station in the
/// same part of overlapping sessions of one room are there at once.
/// </summary>
internal static class StationConstraints
{
    /// <param name="week">The model.</param>
    /// <param name="others">Plans of units outside the model, who have their places.</param>
    public static void Add(WeekModel week, IReadOnlyList<UnitSession> others)
    {
        var rules = week.Problem.Rules;
        if (!rules.IsOn(RuleIds.StationPlaces)) return;
        var perPlace = (long)rules.Value(RuleIds.PlayersPerPlace);
        foreach (var slot in week.Days.Select(d => d.Slot).Distinct())
        {
            var room = StaticRules.RoomOf(week.Problem, slot);
            if (room is null) continue;
            var together = week.Days.Where(d => AtOnce(d.Slot, slot)).ToList();
            foreach (var station in together.SelectMany(d => d.All).SelectMany(c => c.Candidate.Stations).Distinct().Order(StringComparer.Ordinal))
                for (var part = 0; part < 4; part++) Limit(week, slot, station, part, room.Places(station) * perPlace - StationUse.Taken(others, slot, station, part), together, StaticRules.StationRule(rules, slot, station, room));
        }
    }

    private static void Limit(WeekModel week, SessionSlot slot, string station, int part, long places, List<UnitDay> together, RuleAtPlace rule)
    {
        var sum = LinearExpr.NewBuilder();
        long possible = 0;
        foreach (var day in together)
        {
            var choices = day.All.Where(c => c.Candidate.Part == part && c.Candidate.Stations.Contains(station)).Select(c => c.Chosen).ToList();
            if (choices.Count == 0) continue;
            sum.AddTerm(week.Touched(choices, $"at {station} {part} {day} {PlaceTexts.Session(slot)}"), day.Unit.Players.Count);
            possible += day.Unit.Players.Count;
        }

        if (possible > places) week.Rules.Hold(week.Model.Add(sum <= places), rule);
    }

    /// <summary>Whether a session goes on in the same room when the other begins, over midnight too; where a start is not known, sessions of a day are taken to be at once.</summary>
    public static bool AtOnce(SessionSlot going, SessionSlot begins)
    {
        if (going.Room != begins.Room) return false;
        if (going.Start is not { } from || begins.Start is not { } start) return going.Date == begins.Date;
        // With their dates: a time of day alone begins again at midnight.
        var (first, second) = (going.Date.ToDateTime(from), begins.Date.ToDateTime(start));
        return second >= first && second < first.AddMinutes(going.Minutes);
    }
}
