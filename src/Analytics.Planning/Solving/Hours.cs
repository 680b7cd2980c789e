using Analytics.Planning.Weeks;

namespace Analytics.Planning.Solving;

/// <summary>Hours between two sessions or games: by their starts where both are known, else by whole days.</summary>
internal static class Hours
{
    public static double Between(DateOnly firstDate, TimeOnly? firstStart, DateOnly secondDate, TimeOnly? secondStart)
        => firstStart is { } a && secondStart is { } b
            ? Math.Abs((secondDate.ToDateTime(b) - firstDate.ToDateTime(a)).TotalHours)
            : Math.Abs(secondDate.DayNumber - firstDate.DayNumber) * 24.0;

    public static double Between(SessionSlot a, SessionSlot b) => Between(a.Date, a.Start, b.Date, b.Start);

    public static double Between(SessionSlot slot, Game game) => Between(slot.Date, slot.Start, game.Date, game.Start);
}
