namespace Analytics.Metrics.Contact;

/// <summary>What a player ran into.</summary>
public sealed record ContactParty
{
    private ContactParty(string kind, string? athleteId) => (Kind, AthleteId) = (kind, athleteId);

    /// <summary>Not noted.</summary>
    public static ContactParty NotNoted { get; } = new("not noted", null);

    /// <summary>A bag or shield.</summary>
    public static ContactParty Bag { get; } = new("bag", null);

    /// <summary>In words.</summary>
    public string Kind { get; }

    /// <summary>The other athlete; null unless it was one.</summary>
    public string? AthleteId { get; }

    /// <summary>Another athlete.</summary>
    /// <param name="athleteId">Identifier, as in the athlete list.</param>
    /// <exception cref="ArgumentException">Empty.</exception>
    public static ContactParty Athlete(string athleteId)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(athleteId);
        return new("athlete", athleteId);
    }

    /// <summary>The kind, or the identifier of the athlete.</summary>
    public override string ToString() => AthleteId ?? Kind;
}
