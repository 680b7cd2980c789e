using Analytics.Planning.Plans;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Solving;

/// <summary>What groups do in their sessions, so that their restricted players can follow.</summary>
internal sealed class GroupPlans
{
    private readonly HashSet<(string Group, SessionSlot Slot, string Exercise, string Scheme, string? Partner)> items = [];

    /// <summary>Nothing known.</summary>
    public static GroupPlans None { get; } = new();

    /// <summary>The shared parts of groups.</summary>
    public static GroupPlans Of(IEnumerable<UnitSession> sessions)
    {
        var plans = new GroupPlans();
        foreach (var session in sessions.Where(s => !s.IsApart))
            foreach (var item in session.Shared)
                plans.items.Add((session.Group, session.Slot, item.Exercise.Id, item.Scheme.Id, item.Partner?.Id));
        return plans;
    }

    /// <summary>Whether the group does a candidate in a session.</summary>
    public bool Has(UnitDay day, Candidate candidate) => items.Contains((day.Unit.Group, day.Slot, candidate.Exercise.Id, candidate.Scheme.Id, candidate.Partner?.Id));
}
