namespace Analytics.Metrics.Motion;

/// <summary>Samples of a track without a gap between them. Filters and derivatives work inside a piece, never across a gap.</summary>
/// <param name="Start">Index of the first sample.</param>
/// <param name="Length">Samples.</param>
public readonly record struct TrackPiece(int Start, int Length)
{
    /// <summary>Index after the last sample.</summary>
    public int End => Start + Length;

    /// <summary>Whether a sample lies in it.</summary>
    public bool Contains(int index) => index >= Start && index < End;
}
