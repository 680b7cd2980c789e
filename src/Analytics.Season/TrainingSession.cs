namespace Analytics.Season;

/// <summary>One athlete's training session, from sessions.csv.</summary>
public sealed record TrainingSession
{
    /// <summary>Identifier of the athlete.</summary>
    public required string AthleteId { get; init; }

    /// <summary>Day of the session.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>What the session was for, as written; empty when not said.</summary>
    public string Focus { get; init; } = "";

    /// <summary>Length in minutes, if noted.</summary>
    public double? Minutes { get; init; }

    /// <summary>Rating of perceived exertion of the whole session, 0 to 10, if noted.</summary>
    public double? SessionRpe { get; init; }

    /// <summary>Ground contacts of jumps, if counted.</summary>
    public int? JumpContacts { get; init; }
}
