using Analytics.Planning.Dose;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Solving;

/// <summary>Players of one group who get the same shared part; a player with restrictions in the week is a unit of his own.</summary>
/// <param name="Group">Group.</param>
/// <param name="Players">The players.</param>
/// <param name="IsApart">Whether it is one restricted player.</param>
internal sealed record TrainingUnit(string Group, IReadOnlyList<PlanPlayer> Players, bool IsApart)
{
    /// <summary>Identifier in messages.</summary>
    public string Label => IsApart ? $"{Players[0].Name} ({Group})" : Group;

    /// <summary>Fewest contacts anybody of it may make in a session.</summary>
    public int MostContacts(PlanRules rules) => Players.Min(p => ContactLimit.Of(p, rules).Most);

    /// <summary>Units of a problem: groups in the order of the players, whoever is restricted on a day of a session of his apart.</summary>
    public static IReadOnlyList<TrainingUnit> Of(PlanProblem problem)
    {
        var units = new List<TrainingUnit>();
        foreach (var group in problem.Players.GroupBy(p => p.Group))
        {
            var days = problem.Sessions.Where(s => s.Has(group.Key)).Select(s => s.Date).ToHashSet();
            bool IsRestricted(PlanPlayer p) => p.Restrictions.Any(r => days.Any(d => d >= r.From && (r.To is null || d <= r.To)));
            var free = group.Where(p => !IsRestricted(p)).ToList();
            if (free.Count > 0) units.Add(new(group.Key, free, IsApart: false));
            units.AddRange(group.Where(IsRestricted).Select(p => new TrainingUnit(group.Key, [p], IsApart: true)));
        }

        return units;
    }
}

/// <summary>Hours between two sessions or games: by their starts where both are known, else by whole days.</summary>
internal static class Hours
{
    public static double Between(DateOnly firstDate, TimeOnly? firstStart, DateOnly secondDate, TimeOnly? secondStart)
        => firstStart is { } a && secondStart is { } b
            ? Math.Abs((secondDate.ToDateTime(b) - firstDate.ToDateTime(a)).TotalHours)
            : Math.Abs(secondDate.DayNumber - firstDate.DayNumber) * 24.0;

    public static double Between(SessionSlot a, SessionSlot b) => Between(a.Date, a.Start, b.Date, b.Start);

    public static double Between(SessionSlot slot, Game game) => Between(slot.Date, slot.Start, game.Date, game.Start);
}
