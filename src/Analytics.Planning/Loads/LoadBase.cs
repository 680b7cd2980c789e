using System.Globalization;
using Analytics.Planning.Rules;

namespace Analytics.Planning.Loads;

/// <summary>Why a test gives no loads.</summary>
public enum BaseGap
{
    /// <summary>It is too long ago.</summary>
    Expired,

    /// <summary>The player was hurt since.</summary>
    HurtSince,
}

/// <summary>
/// What per cent of a 1RM are taken of: the estimate, or the lower side of its range where it is doubtful, wide, old or without a known error; nothing where the test
/// is too old or the player was hurt since. The limits are our choice, no source.
/// </summary>
public sealed record LoadBase
{
    /// <summary>A range whose lower side lies further down than this share of the value is wide (our choice, no source).</summary>
    public const double Wide = 0.10;

    /// <summary>Share taken off where no error is known (our choice, no source).</summary>
    public const double UnknownError = 0.10;

    // Per cent of the added load alone says nothing: the body is lifted too.
    private static readonly HashSet<string> s_added = new(StringComparer.Ordinal) { "pull_up", "dip" };

    private LoadBase()
    {
    }

    /// <summary>The test.</summary>
    public required KnownMaximum Test { get; init; }

    /// <summary>Days since the test.</summary>
    public required int AgeDays { get; init; }

    /// <summary>What per cent are of, kg; 0 where <see cref="Gap"/> speaks.</summary>
    public double Kilograms { get; private init; }

    /// <summary>Why the lower side is taken, in words; empty where it is not.</summary>
    public IReadOnlyList<string> Reasons { get; private init; } = [];

    /// <summary>What a rule that only flags would have asked for, in words.</summary>
    public IReadOnlyList<string> Remarks { get; private init; } = [];

    /// <summary>Why there is no base; null when there is.</summary>
    public BaseGap? Gap { get; private init; }

    /// <summary>Whether the test is older than the rule has it, so that another test may say more.</summary>
    public bool IsOld { get; private init; }

    /// <summary>Whether the lower side of the range is taken.</summary>
    public bool IsLowerSide => Reasons.Count > 0;

    /// <summary>No load goes above it, kg: on a doubtful estimate what was lifted; else infinite.</summary>
    public double CapKilograms => Test.Doubt is null ? double.PositiveInfinity : Test.HeaviestKilograms;

    /// <summary>Whether the load of a lift is weight added to the own body, of which per cent say nothing.</summary>
    /// <param name="lift">Identifier of the lift.</param>
    public static bool IsAddedWeight(string lift) => s_added.Contains(lift);

    /// <summary>The base of a test on a day.</summary>
    /// <param name="test">The test.</param>
    /// <param name="today">The day.</param>
    /// <param name="rules">Rules: after how many days a test is old, and says nothing.</param>
    public static LoadBase Of(KnownMaximum test, DateOnly today, PlanRules rules)
    {
        ArgumentNullException.ThrowIfNull(test);
        ArgumentNullException.ThrowIfNull(rules);
        var age = today.DayNumber - test.Date.DayNumber;
        LoadBase known = new() { Test = test, AgeDays = age };
        bool After(string rule) => rules.IsOn(rule) && age > rules.Value(rule);
        var (old, expired) = (After(RuleIds.TestOldAfter), After(RuleIds.TestExpiresAfter));
        if (expired && rules.Refuses(RuleIds.TestExpiresAfter)) return known with { Gap = BaseGap.Expired };
        if (test.HurtSince is not null) return known with { Gap = BaseGap.HurtSince };

        var low = Math.Max(0, Math.Min(test.Range?.Low ?? test.Kilograms * (1 - UnknownError), test.Kilograms));
        var weeks = string.Create(CultureInfo.InvariantCulture, $"{age / 7} weeks old");
        List<string> reasons = [];
        if (test.Doubt is { } doubt) reasons.Add(doubt);
        else if (test.Range is null) reasons.Add("no error known, a tenth taken off");
        else if (test.Kilograms - low > Wide * test.Kilograms) reasons.Add("wide range");
        if (old && rules.Refuses(RuleIds.TestOldAfter)) reasons.Add(weeks);
        return known with
        {
            Kilograms = reasons.Count > 0 ? low : test.Kilograms,
            Reasons = reasons,
            IsOld = old,
            Remarks = (old && !rules.Refuses(RuleIds.TestOldAfter)) || expired ? [$"the test is {weeks}"] : [],
        };
    }
}
