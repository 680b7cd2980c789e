namespace Analytics.Planning.Weeks;

/// <summary>Part of the year.</summary>
public enum SeasonPhase
{
    /// <summary>No games; most training.</summary>
    OffSeason,

    /// <summary>Before the first game.</summary>
    PreSeason,

    /// <summary>Games every week.</summary>
    InSeason,
}

/// <summary>One session of a usual week.</summary>
/// <param name="Weekday">Day of the week; null where days to the game are counted.</param>
/// <param name="DaysToGame">Days before the game, 1 to 6; null where a weekday is named.</param>
/// <param name="Kind">Identifier of its kind.</param>
/// <param name="Minutes">Minutes.</param>
public sealed record ShapeDay(DayOfWeek? Weekday, int? DaysToGame, string Kind, int Minutes);

/// <summary>The usual week of a phase, taken where the calendar has no session in a week.</summary>
/// <param name="Phase">Phase.</param>
/// <param name="Days">Its sessions.</param>
/// <param name="Source">Source key, or "common practice, no source".</param>
public sealed record WeekShape(SeasonPhase Phase, IReadOnlyList<ShapeDay> Days, string Source)
{
    /// <summary>The sessions of the week that begins on a Monday.</summary>
    /// <param name="monday">First day.</param>
    /// <param name="games">Games of this week and the next; days to a game count to the first that follows.</param>
    /// <param name="room">Room of all sessions.</param>
    public IReadOnlyList<SessionSlot> Sessions(DateOnly monday, IReadOnlyList<Game> games, string room)
    {
        ArgumentNullException.ThrowIfNull(games);
        return [.. Enumerable.Range(0, 7).Select(monday.AddDays).SelectMany(date => Days.Where(d => Falls(d, date, games)).Take(1)
            .Select(d => new SessionSlot { Date = date, Kind = d.Kind, Minutes = d.Minutes, Room = room }))];
    }

    private static bool Falls(ShapeDay day, DateOnly date, IReadOnlyList<Game> games)
        => day.Weekday is { } weekday ? date.DayOfWeek == weekday && games.All(g => g.Date != date)
            : games.Where(g => g.Date >= date).OrderBy(g => g.Date).FirstOrDefault() is { } next && next.Date.DayNumber - date.DayNumber == day.DaysToGame;
}
