using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>Frames missing in a recording, seen as a time stamp that comes too late.</summary>
/// <param name="AfterFrame">The last frame before the hole.</param>
/// <param name="Count">Frames missing, rounded.</param>
/// <param name="Hole">Time from that frame to the next one recorded.</param>
public sealed record DroppedFrames(int AfterFrame, int Count, Duration Hole);
