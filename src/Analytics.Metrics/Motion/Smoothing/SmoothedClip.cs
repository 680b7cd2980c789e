using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>A clip after filtering, and what was done to each marker.</summary>
/// <param name="Clip">The filtered clip; each track carries its filter.</param>
/// <param name="Notes">In sentences: cut-offs that could not be chosen, pieces too short to filter and left out.</param>
public sealed record SmoothedClip(DigitisedClip Clip, IReadOnlyList<string> Notes)
{
    /// <summary>The cut-off of each landmark.</summary>
    public IReadOnlyDictionary<MarkerRole, Frequency> Cutoffs { get; } = Clip.Tracks.Where(t => t.Smoothing is not null).ToDictionary(t => t.Role, t => t.Smoothing!.Cutoff);
}
