using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>What a change is, as its mark and words say it. The verdict is the caller's; the chart only shows it.</summary>
public enum ChangeVerdict
{
    /// <summary>The interval leaves more than one answer open.</summary>
    CannotTellYet,

    /// <summary>Better, beyond what test error explains.</summary>
    ClearGain,

    /// <summary>Worse, beyond what test error explains.</summary>
    ClearLoss,

    /// <summary>The whole interval is too small to matter.</summary>
    TooSmallToMatter,

    /// <summary>Higher beyond test error, where no direction is better.</summary>
    ClearlyUp,

    /// <summary>Lower beyond test error, where no direction is better.</summary>
    ClearlyDown,

    /// <summary>No error is known for this test, so nothing can be said.</summary>
    NoErrorKnown,
}

/// <summary>One change: of a player, a group or a measure.</summary>
/// <param name="Name">Name of the player, group or measure.</param>
/// <param name="Change">The change, in the unit of the axis.</param>
/// <param name="Low">Lower limit of its interval; null when no error is known.</param>
/// <param name="High">Upper limit of its interval; null when no error is known.</param>
/// <param name="Verdict">What can be said.</param>
/// <param name="Group">Position group in small print; may be empty.</param>
/// <param name="Note">What would help, or a remark; may be empty.</param>
public sealed record ChangeRow(string Name, double Change, double? Low, double? High, ChangeVerdict Verdict, string Group = "", string Note = "")
{
    /// <summary>What stands beside the mark where the axis is not in the unit of the row, for example <c>+18 lb (+12 to +24)</c>; empty for the numbers of the axis.</summary>
    public string Shown { get; init; } = string.Empty;

    internal bool IsClear => Verdict is ChangeVerdict.ClearGain or ChangeVerdict.ClearLoss or ChangeVerdict.ClearlyUp or ChangeVerdict.ClearlyDown;

    internal Tone Tone => Verdict.Tone();

    internal string Words => Verdict.Words();
}
