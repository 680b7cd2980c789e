using Analytics.Metrics.Load;
using Analytics.Quantities;

namespace Analytics.Season;

/// <summary>One athlete's training session, from one or several rows of sessions.csv. What is null was not written down.</summary>
public sealed record TrainingSession
{
    /// <summary>Identifier of the athlete.</summary>
    public required string AthleteId { get; init; }

    /// <summary>Day of the session.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>What the session was for, as first written; empty when not said.</summary>
    public string Focus { get; init; } = "";

    /// <summary>Length in minutes, if noted.</summary>
    public double? Minutes { get; init; }

    /// <summary>Rating of perceived exertion of the whole session, 0 to 10, if noted.</summary>
    public double? SessionRpe { get; init; }

    /// <summary>Ground contacts of jumps, if counted.</summary>
    public int? JumpContacts { get; init; }

    /// <summary>Sets lifted, in file order; empty when none was written down, which does not say that none was lifted.</summary>
    public IReadOnlyList<ExerciseSets> Exercises { get; init; } = [];

    /// <summary>The session for the library's sums of load and dose.</summary>
    public SessionWork Work => new(Date, Minutes is { } minutes ? Duration.FromMinutes(minutes) : null, SessionRpe, JumpContacts) { Exercises = Exercises };
}
