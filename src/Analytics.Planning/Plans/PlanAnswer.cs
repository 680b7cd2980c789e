namespace Analytics.Planning.Plans;

/// <summary>A rule at one place: a day, a group, a player.</summary>
/// <param name="RuleId">Identifier of the rule.</param>
/// <param name="Subject">Where it holds, in words.</param>
/// <param name="Text">What it asks there, in words.</param>
public sealed record RuleAtPlace(string RuleId, string Subject, string Text);

/// <summary>What taking one rule of a clash away would give.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="GivesPlan">Whether there is a plan then.</param>
/// <param name="Text">What would change, in words.</param>
public sealed record Relaxation(RuleAtPlace Rule, bool GivesPlan, string Text);

/// <summary>Rules that cannot all be kept: taking any one of them away, the rest can.</summary>
/// <param name="Rules">The rules.</param>
/// <param name="Relaxations">What taking each away would give, in the same order.</param>
public sealed record RuleClash(IReadOnlyList<RuleAtPlace> Rules, IReadOnlyList<Relaxation> Relaxations);

/// <summary>A plan, or the rules that clash.</summary>
/// <param name="Plan">The plan; null when there is none.</param>
/// <param name="Clashes">Clashes, each of its own rules; empty when there is a plan.</param>
/// <param name="Undecided">Why neither is known; null as a rule.</param>
public sealed record PlanAnswer(WeekPlan? Plan, IReadOnlyList<RuleClash> Clashes, string? Undecided = null);
