namespace Analytics.Metrics.Transfer;

/// <summary>Choices of a transfer study.</summary>
public sealed record TransferOptions
{
    /// <summary>Coverage of a single interval; one minus it is the rate of false findings over all pairs together.</summary>
    public double Level { get; init; } = 0.95;

    /// <summary>Fewest athletes with gains in both measures for a pair to be judged (our choice, no source).</summary>
    public int MinimumAthletes { get; init; } = 10;

    /// <summary>From this correlation of true gains on a link is called strong; an upper limit below it speaks against one [cohen1988].</summary>
    public double StrongLink { get; init; } = 0.5;
}
