namespace Analytics.Metrics.Profile;

/// <summary>An athlete and the position group to compare with.</summary>
/// <param name="Id">Identifier of the athlete.</param>
/// <param name="Group">Position group; athletes are compared within it only.</param>
public sealed record SquadMember(string Id, string Group);
