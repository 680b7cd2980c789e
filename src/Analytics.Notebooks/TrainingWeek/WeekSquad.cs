using Analytics.Planning.People;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>A remark about a player's part in the week.</summary>
/// <param name="AthleteId">Identifier of the player.</param>
/// <param name="Name">Name. Untrusted text: always escape.</param>
/// <param name="Reason">In words.</param>
internal sealed record PlayerNote(string AthleteId, string Name, string Reason);

/// <summary>The players of a week and those who are not in it.</summary>
/// <param name="Players">Players who train, in squad order; one who is out on some of the days carries a restriction of everything for them.</param>
/// <param name="Out">Players who are out on every day with a session, with the reason.</param>
/// <param name="PartlyOut">Players who are out on some of the days, with the reason.</param>
/// <param name="Limited">Players listed as limited: planned, but medical staff say first what they may do.</param>
internal sealed record WeekSquad(
    IReadOnlyList<PlanPlayer> Players, IReadOnlyList<PlayerNote> Out, IReadOnlyList<PlayerNote> PartlyOut, IReadOnlyList<PlayerNote> Limited);

/// <summary>What a week's squad is made from besides the season.</summary>
internal sealed record WeekQuestion
{
    /// <summary>First day. Tests after it are not looked at.</summary>
    public required DateOnly Monday { get; init; }

    /// <summary>Days with a session; all seven of the week when there is none.</summary>
    public IReadOnlyList<DateOnly> Days { get; init; } = [];

    /// <summary>What players may not do, as listed.</summary>
    public IReadOnlyList<Restriction> Restrictions { get; init; } = [];

    /// <summary>Rules.</summary>
    public Planning.Rules.PlanRules Rules { get; init; } = Planning.Rules.PlanRules.Standard;

    /// <summary>Targets of the coach.</summary>
    public Planning.Needs.GroupTargets Targets { get; init; } = Planning.Needs.GroupTargets.None;
}
