using Analytics.Metrics.Load;
using Analytics.Planning.People;
using Analytics.Planning.Rules;

namespace Analytics.Planning.Dose;

/// <summary>Ground contacts a player may make in a session.</summary>
/// <param name="Most">Most contacts.</param>
/// <param name="Level">Experience it was taken for, in words.</param>
/// <param name="IsHeavy">Whether it was lowered for body mass.</param>
public sealed record ContactLimit(int Most, string Level, bool IsHeavy)
{
    /// <summary>Years of structured training up to which a player counts as without experience of jump training (our choice, no source).</summary>
    public const double NoExperienceUpTo = 1;

    /// <summary>Years from which a player counts as with much experience (our choice, no source).</summary>
    public const double MuchExperienceFrom = 3;

    /// <summary>The limit of a player: the upper figure of the guide for his years of training, lowered where he is heavy. Unknown years count as none, an unknown body mass as heavy.</summary>
    /// <param name="player">The player.</param>
    /// <param name="rules">The rules.</param>
    public static ContactLimit Of(PlanPlayer player, PlanRules rules)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentNullException.ThrowIfNull(rules);
        var guide = ContactGuide.All[IsBeginner(player) ? 0 : player.TrainingYears < MuchExperienceFrom ? 1 : 2];
        var heavy = IsHeavyPlayer(player, rules) && rules.IsOn(RuleIds.HeavyPlayerContacts);
        var share = rules.Value(RuleIds.JumpContacts) / 100 * (heavy ? rules.Value(RuleIds.HeavyPlayerContacts) / 100 : 1);
        return new((int)Math.Floor(guide.High * share + 1e-9), guide.Level, heavy);
    }

    /// <summary>Whether a player counts as without experience of jump training; unknown years count as none.</summary>
    /// <param name="player">The player.</param>
    public static bool IsBeginner(PlanPlayer player)
    {
        ArgumentNullException.ThrowIfNull(player);
        return (player.TrainingYears ?? 0) <= NoExperienceUpTo;
    }

    /// <summary>Whether a player is above the body mass of the rule; an unknown one counts as above it, and nobody is where the rule is off.</summary>
    /// <param name="player">The player.</param>
    /// <param name="rules">The rules.</param>
    public static bool IsHeavyPlayer(PlanPlayer player, PlanRules rules)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentNullException.ThrowIfNull(rules);
        return rules.IsOn(RuleIds.HeavyPlayer) && !(player.BodyMass?.Kilograms <= rules.Value(RuleIds.HeavyPlayer));
    }
}
