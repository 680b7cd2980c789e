using Analytics.Planning.Dose;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;

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
