namespace Analytics.Statistics.Change;

/// <summary>What may be said about one athlete's change.</summary>
public enum Verdict
{
    /// <summary>Better, beyond what test error explains, by more than the smallest worthwhile change.</summary>
    ClearGain,

    /// <summary>Worse, beyond what test error explains, by more than the smallest worthwhile change.</summary>
    ClearLoss,

    /// <summary>The whole interval lies inside the smallest worthwhile change.</summary>
    TooSmallToMatter,

    /// <summary>Neither can be said from this test.</summary>
    CannotTellYet,
}

/// <summary>Plain words of verdicts.</summary>
public static class VerdictWords
{
    /// <summary>The words a coach reads.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Words(this Verdict verdict) => verdict switch
    {
        Verdict.ClearGain => "clear gain",
        Verdict.ClearLoss => "clear loss",
        Verdict.TooSmallToMatter => "too small to matter",
        Verdict.CannotTellYet => "cannot tell yet",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Unknown verdict."),
    };

    /// <summary>Whether the verdict is a gain or a loss, and so may be a false flag.</summary>
    /// <param name="verdict">The verdict.</param>
    public static bool IsClear(this Verdict verdict) => verdict is Verdict.ClearGain or Verdict.ClearLoss;
}
