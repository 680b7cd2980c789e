using Analytics.Planning.Weeks;

namespace Analytics.Planning.Dose;

/// <summary>One amount of a week against its limit.</summary>
public sealed record DoseLine
{
    /// <summary>Rule whose limit it is; null for a guide that no plan must keep, and for an amount without a limit.</summary>
    public string? RuleId { get; init; }

    /// <summary>Session; null for a day and for the week.</summary>
    public SessionSlot? Session { get; init; }

    /// <summary>Day of all its sessions together; null for a session and for the week.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>What it is of, in words: an exercise, a pattern, "session", "day". Untrusted text: always escape.</summary>
    public required string Subject { get; init; }

    /// <summary>What is counted, in words.</summary>
    public required string What { get; init; }

    /// <summary>The amount; null where it is not defined or not known, and <see cref="Note"/> says why.</summary>
    public required double? Amount { get; init; }

    /// <summary>Unit; empty for a count or a pure number.</summary>
    public string Unit { get; init; } = "";

    /// <summary>The limit; null where there is none or its rule is off.</summary>
    public double? Limit { get; init; }

    /// <summary>Whether the limit is a least amount rather than a most.</summary>
    public bool IsLeast { get; init; }

    /// <summary>Source key, or "common practice, no source".</summary>
    public required string Source { get; init; }

    /// <summary>What goes with it, in words; null when nothing does.</summary>
    public string? Note { get; init; }

    /// <summary>Whether it keeps the limit; null where there is none or the amount is not known.</summary>
    public bool? IsWithin => Limit is not { } limit || Amount is not { } amount ? null : IsLeast ? amount >= limit - RoundingError : amount <= limit + RoundingError;

    private const double RoundingError = 1e-9;
}
