namespace Analytics.Season;

/// <summary>A code and whose it is. Private.</summary>
/// <param name="AthleteId">Identifier of the athlete list.</param>
/// <param name="Name">Name. Untrusted text: always escape.</param>
/// <param name="Code">What he is called where codes are shared.</param>
public sealed record AthleteCode(string AthleteId, string Name, string Code);
