using Analytics.Season.Columns;

namespace Analytics.Season.Training;

/// <summary>The columns <c>calendar.csv</c> may have.</summary>
internal static class CalendarColumns
{
    public static readonly Column Date = new("date", needed: true);

    public static readonly Column Start = new("start");

    public static readonly Column Kind = new("kind", needed: true);

    public static readonly NumberColumn Minutes = SessionMinutes(needed: false);

    public static readonly Column Room = new("room");

    public static readonly Column Groups = new("groups");

    public static readonly IReadOnlyList<Column> All = [Date, Start, Kind, Minutes, Room, Groups];

    /// <summary>Minutes of a session; common practice, no source.</summary>
    public static NumberColumn SessionMinutes(bool needed) => new("minutes", 10, 240, whole: true, needed: needed);
}
