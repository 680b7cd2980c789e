using Analytics.Planning.Weeks;
using Analytics.Planning.Exercises;

namespace Analytics.Planning.Plans;

/// <summary>How good a plan is known to be.</summary>
/// <param name="Objective">Value of the objective.</param>
/// <param name="Bound">No plan can have a higher one.</param>
/// <param name="HitClock">Whether the clock stopped the search, so that another run may differ.</param>
public sealed record PlanQuality(double Objective, double Bound, bool HitClock)
{
    /// <summary>How much better a plan could at most be, as a share of the bound; 0 when it is proven best.</summary>
    public double Gap => Math.Abs(Bound) < 1e-9 ? 0 : Math.Max(0, (Bound - Objective) / Math.Abs(Bound));
}

/// <summary>Why something is not in the plan.</summary>
/// <param name="Group">Group or player it is about.</param>
/// <param name="What">Exercise or need, in words.</param>
/// <param name="Reason">Why.</param>
public sealed record LeftOut(string Group, string What, string Reason);

/// <summary>A rule that is only flagged and was not kept.</summary>
/// <param name="RuleId">Identifier of the rule.</param>
/// <param name="Subject">Day, group, player, exercise, in words.</param>
/// <param name="Text">What exceeds what.</param>
public sealed record RuleFlag(string RuleId, string Subject, string Text);

/// <summary>A need of a player and the sets that serve it.</summary>
/// <param name="AthleteId">Identifier of the player.</param>
/// <param name="Quality">The quality.</param>
/// <param name="Probability">Probability that he is below the target.</param>
/// <param name="OwnSets">Sets of own work for it in the week.</param>
/// <param name="Reason">Why there are none; null when there are.</param>
public sealed record ServedNeed(string AthleteId, TrainedQuality Quality, double Probability, int OwnSets, string? Reason)
{
    /// <summary>Half of the body it is about.</summary>
    public BodyHalf Half { get; init; }

    /// <summary>What it is of, in words: "maximal strength for the legs".</summary>
    public string What => Quality.Name() + Half.Words();
}

/// <summary>The plan of a week.</summary>
public sealed record WeekPlan
{
    /// <summary>First day, a Monday.</summary>
    public required DateOnly Monday { get; init; }

    /// <summary>Sessions by date, start and group.</summary>
    public required IReadOnlyList<UnitSession> Sessions { get; init; }

    /// <summary>How good it is known to be.</summary>
    public required PlanQuality Quality { get; init; }

    /// <summary>Needs and the sets that serve them.</summary>
    public required IReadOnlyList<ServedNeed> Needs { get; init; }

    /// <summary>What was left out, and why.</summary>
    public required IReadOnlyList<LeftOut> LeftOut { get; init; }

    /// <summary>Rules that are only flagged and were not kept.</summary>
    public required IReadOnlyList<RuleFlag> Flags { get; init; }

    /// <summary>Differences from the earlier plan of this week, in words; empty when there was none or nothing changed.</summary>
    public required IReadOnlyList<string> Changes { get; init; }
}
