using Analytics.Metrics.Strength;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Dose;

/// <summary>What one player does in one session.</summary>
/// <param name="Slot">The session.</param>
/// <param name="Items">His exercises, in order.</param>
public sealed record PlayerSession(SessionSlot Slot, IReadOnlyList<PlannedItem> Items);

/// <summary>The dose of one player's week, worked out from exercises and schemes alone. It counts one exercise as the search for a plan does, and adds up by itself.</summary>
/// <param name="AthleteId">Identifier of the player.</param>
/// <param name="Lines">Sessions in order, days with several sessions, the week.</param>
public sealed record DoseSheet(string AthleteId, IReadOnlyList<DoseLine> Lines)
{
    /// <summary>Limits of rules that are not kept.</summary>
    public IEnumerable<DoseLine> NotKept => Lines.Where(l => l.RuleId is not null && l.IsWithin == false);

    /// <summary>Guides, no rules, that are not kept.</summary>
    public IEnumerable<DoseLine> Remarks => Lines.Where(l => l.RuleId is null && l.IsWithin == false);

    /// <summary>The dose of a week.</summary>
    /// <param name="player">The player.</param>
    /// <param name="sessions">His sessions of the week.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="loads">Loads of an item, where they are wanted: then volume-load is counted. Null leaves it away.</param>
    /// <param name="table">Table for schemes that name only repetitions in reserve; the textbook's when null.</param>
    public static DoseSheet Of(PlanPlayer player, IReadOnlyList<PlayerSession> sessions, PlanRules rules, Func<PlannedItem, Prescription>? loads = null, RepetitionTable? table = null)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentNullException.ThrowIfNull(sessions);
        ArgumentNullException.ThrowIfNull(rules);
        var by = table ?? RepetitionTables.Textbook;
        return new(player.Id,
        [
            .. sessions.SelectMany(s => SessionDose.Of(player, s, rules, by).Concat(loads is null ? [] : VolumeDose.Of(s, loads))),
            .. DayDose.Contacts(player, sessions, rules),
            .. WeekDose.HardSets(sessions, rules, by),
        ]);
    }

    /// <summary>The dose of a player's part of a plan.</summary>
    /// <param name="player">The player.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="loads">Loads of an item; null leaves volume-load away.</param>
    /// <param name="table">Table for schemes that name only repetitions in reserve; the textbook's when null.</param>
    public static DoseSheet Of(PlanPlayer player, WeekPlan plan, PlanRules rules, Func<PlannedItem, Prescription>? loads = null, RepetitionTable? table = null)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentNullException.ThrowIfNull(plan);
        return Of(player, [.. plan.Sessions.Where(s => s.Players.Contains(player.Id)).Select(s => new PlayerSession(s.Slot, s.For(player.Id)))], rules, loads, table);
    }
}
