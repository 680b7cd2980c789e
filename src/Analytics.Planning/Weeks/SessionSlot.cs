namespace Analytics.Planning.Weeks;

/// <summary>A training session in the calendar.</summary>
public sealed record SessionSlot
{
    /// <summary>Day.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Start; null when the calendar does not say.</summary>
    public TimeOnly? Start { get; init; }

    /// <summary>Identifier of its kind.</summary>
    public required string Kind { get; init; }

    /// <summary>Minutes from first warm-up to leaving the room.</summary>
    public required int Minutes { get; init; }

    /// <summary>Room; empty when the calendar names none, and then nothing is known to be there but a floor.</summary>
    public string Room { get; init; } = "";

    /// <summary>Groups that train in it; empty for all.</summary>
    public IReadOnlyList<string> Groups { get; init; } = [];

    /// <summary>Whether a group trains in it.</summary>
    /// <param name="group">Group.</param>
    public bool Has(string group) => Groups.Count == 0 || Groups.Contains(group);
}

/// <summary>A game.</summary>
/// <param name="Date">Day.</param>
/// <param name="Start">Start; null when the calendar does not say.</param>
public sealed record Game(DateOnly Date, TimeOnly? Start = null);
