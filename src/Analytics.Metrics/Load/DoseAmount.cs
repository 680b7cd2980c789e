namespace Analytics.Metrics.Load;

/// <summary>A sum over sessions, of which some may not have been written down.</summary>
/// <param name="Measure">What was summed.</param>
/// <param name="Known">Sum over the sessions that say it: a lower bound of the dose when <paramref name="Unknown"/> is above 0.</param>
/// <param name="Sessions">Sessions of the period.</param>
/// <param name="Unknown">Of these, sessions that do not say it.</param>
public sealed record DoseAmount(DoseMeasure Measure, double Known, int Sessions, int Unknown)
{
    /// <summary>Sum over all sessions; null when one does not say it, or when there is no session.</summary>
    public double? Value => Sessions > 0 && Unknown == 0 ? Known : null;

    /// <summary>Whether <see cref="Known"/> is only a lower bound.</summary>
    public bool IsLowerBound => Unknown > 0;

    /// <summary>Share of the sessions that say it, 0 to 1; null without sessions.</summary>
    public double? ShareKnown => Sessions > 0 ? 1 - (double)Unknown / Sessions : null;

    /// <summary>
    /// The sum, each silent session counted as the athlete's mean session, where at least this share of the sessions speaks; else null. A guess for comparing
    /// athletes whose sheets have few gaps, never a record of what was done.
    /// </summary>
    /// <param name="leastShare">Share of the sessions that must say it, above 0, at most 1.</param>
    public double? Filled(double leastShare)
    {
        if (leastShare is not (> 0 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(leastShare), leastShare, FormattableString.Invariant($"The least share is {leastShare}; allowed: above 0, at most 1."));
        return ShareKnown is { } share && share >= leastShare ? Known / share : null;
    }

    /// <summary>What is missing, in words; empty when nothing is.</summary>
    public string Note => (Sessions, Unknown) switch
    {
        (0, _) => "not known: no session written down",
        (_, 0) => string.Empty,
        var (all, unknown) when unknown == all => $"not known: {Missing} of all {all} sessions",
        var (all, unknown) => $"at least: {unknown} of {all} sessions {Missing}",
    };

    private string Missing => Measure switch
    {
        DoseMeasure.SessionLoad => "without rating or minutes",
        DoseMeasure.Minutes => "without minutes",
        DoseMeasure.JumpContacts => "without a count",
        _ => "not written down",
    };
}
