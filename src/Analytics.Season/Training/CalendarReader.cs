using Analytics.Planning.Weeks;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Squad;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>What a calendar may name.</summary>
/// <param name="Settings">Settings of the season.</param>
/// <param name="Kinds">Kinds of day.</param>
/// <param name="Rooms">Rooms.</param>
/// <param name="Groups">Position groups of the squad.</param>
internal sealed record CalendarWords(SeasonSettings Settings, IReadOnlyCollection<string> Kinds, IReadOnlyCollection<string> Rooms, IReadOnlyCollection<string> Groups);

/// <summary>Reads <c>calendar.csv</c>: training sessions and games.</summary>
internal static class CalendarReader
{
    /// <summary>Sessions and games that could be kept, by date.</summary>
    public static (IReadOnlyList<SessionSlot> Sessions, IReadOnlyList<Game> Games) Read(SeasonIntake intake, IEnumerable<Table> tables, CalendarWords words)
    {
        var rows = new List<CalendarRow>();
        foreach (var table in tables)
        {
            intake.ReadRows(table, CalendarColumns.All, withGates: false, (row, tally) =>
            {
                var date = row.DayOf(CalendarColumns.Date, words.Settings);
                var start = row.Time(CalendarColumns.Start);
                var isGame = Words.Normal(row.NeedText(CalendarColumns.Kind, "kind")) == DayKind.Game;
                var slot = isGame ? null : Session(row, words);
                if (row.Faults.Count > 0) return;
                var place = new RowPlace(table.Path, row.Line, tally);
                if (isGame) rows.Add(new CalendarRow(place, new Game(date!.Value, start), null, row.Text(CalendarColumns.Date)));
                else rows.Add(new CalendarRow(place, null, slot! with { Date = date!.Value, Start = start }, row.Text(CalendarColumns.Date)));
            });
        }

        return CalendarChecks.Keep(rows);
    }

    private static SessionSlot Session(RowCells row, CalendarWords words)
    {
        var text = row.Text(CalendarColumns.Kind);
        var kind = text.Length > 0 ? row.Refer(CalendarColumns.Kind, "kind", text, [.. words.Kinds, DayKind.Game], "day-kinds.csv") : null;
        var room = row.Text(CalendarColumns.Room) is { Length: > 0 } named ? row.Refer(CalendarColumns.Room, "room", named, words.Rooms, "rooms.csv") : "";
        return new SessionSlot
        {
            Date = default,
            Kind = kind ?? "",
            Minutes = row.NeedWhole(CalendarColumns.Minutes, "number of minutes"),
            Room = room ?? "",
            Groups = [.. row.Parts(CalendarColumns.Groups).Select(g => row.Refer(CalendarColumns.Groups, "group", g, words.Groups, "athletes.csv")).OfType<string>().Distinct()],
        };
    }
}
