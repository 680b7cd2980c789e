using Analytics.Planning.Exercises;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Plans;

/// <summary>What players of one group who train together do in one session. A restricted player trains apart where he must.</summary>
public sealed record UnitSession
{
    /// <summary>The session.</summary>
    public required SessionSlot Slot { get; init; }

    /// <summary>Its kind.</summary>
    public required DayKind Kind { get; init; }

    /// <summary>Group.</summary>
    public required string Group { get; init; }

    /// <summary>The players, by identifier.</summary>
    public required IReadOnlyList<string> Players { get; init; }

    /// <summary>Whether it is the plan of one restricted player.</summary>
    public bool IsApart { get; init; }

    /// <summary>What all of them do, in session order.</summary>
    public required IReadOnlyList<PlannedItem> Shared { get; init; }

    /// <summary>Own work, in session order; each player has one at most.</summary>
    public required IReadOnlyList<OwnWork> Own { get; init; }

    /// <summary>Whether jumps and sprints come before power, power before strength; where the rule is off, what stands at one station comes together and own work last.</summary>
    public bool IsInOrder { get; init; } = true;

    /// <summary>Minutes with warm-up, changes and the longest own work.</summary>
    public required double Minutes { get; init; }

    /// <summary>Everything one player does, in session order.</summary>
    /// <param name="athleteId">Identifier of the player.</param>
    public IReadOnlyList<PlannedItem> For(string athleteId)
    {
        var all = Shared.Concat(Own.Where(o => o.ForNeed.Contains(athleteId) || o.ByDefault.Contains(athleteId)).Select(o => o.Item));
        return [.. IsInOrder ? all.OrderBy(i => i.Exercise.Quality.PartOfSession()) : all];
    }
}
