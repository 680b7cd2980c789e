using Analytics.Metrics.Load;

namespace Analytics.Planning.Feedback;

/// <summary>What one player wrote down of one session.</summary>
/// <param name="AthleteId">Identifier of the player.</param>
/// <param name="Work">The session; what is null or not listed in it is not known, never not done.</param>
public sealed record LoggedSession(string AthleteId, SessionWork Work);
