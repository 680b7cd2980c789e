namespace Analytics.Metrics.Contact;

/// <summary>An event read off a clip by eye.</summary>
/// <param name="Frame">First frame in which it is seen.</param>
/// <param name="Row">Row of the picture at which it is seen, in pixels from the top; null when it was not noted. Only cameras that expose row after row need it (<see cref="RollingShutter"/>).</param>
public sealed record EventReading(int Frame, double? Row = null);
