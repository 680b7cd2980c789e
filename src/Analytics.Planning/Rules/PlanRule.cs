namespace Analytics.Planning.Rules;

/// <summary>What happens where a rule is not kept.</summary>
public enum RuleHandling
{
    /// <summary>No plan breaks it.</summary>
    Refuse,

    /// <summary>A plan may break it and says so at the place.</summary>
    Flag,

    /// <summary>It is not looked at.</summary>
    Off,
}

/// <summary>A rule of planning.</summary>
/// <param name="Id">Identifier.</param>
/// <param name="Label">What it asks, in words.</param>
/// <param name="Value">Its figure; null where it has none.</param>
/// <param name="Unit">Unit of the figure; empty where it has none.</param>
/// <param name="Handling">What happens where it is not kept.</param>
/// <param name="Source">Source key, or "common practice, no source".</param>
public sealed record PlanRule(string Id, string Label, double? Value, string Unit, RuleHandling Handling, string Source);
