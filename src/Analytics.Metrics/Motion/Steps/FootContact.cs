namespace Analytics.Metrics.Motion;

/// <summary>
/// One ground contact of one foot, its frames read off the clip by eye. They are typed, not detected: no rule we know of is published as good for first steps filmed
/// at phone rates, and a wrong one would shift contact times by frames.
/// </summary>
/// <param name="Far">The foot away from the camera.</param>
/// <param name="TouchdownFrame">First frame in which the foot is on the ground.</param>
/// <param name="ToeOffFrame">First frame in which it has left it; null when it was not read.</param>
public sealed record FootContact(bool Far, int TouchdownFrame, int? ToeOffFrame);
