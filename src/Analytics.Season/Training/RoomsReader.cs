using Analytics.Planning.Rooms;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>Reads <c>rooms.csv</c>: one row for each room and station.</summary>
internal static class RoomsReader
{
    private static readonly Column RoomName = new("room", needed: true);
    private static readonly Column Station = new("station", needed: true);
    private static readonly NumberColumn Places = new("places", 0, 200, whole: true, needed: true);

    public static readonly IReadOnlyList<Column> Columns = [RoomName, Station, Places];

    /// <summary>The rooms that could be kept, in the order of their first rows.</summary>
    public static List<Room> Read(SeasonIntake intake, IEnumerable<Table> tables)
    {
        var (rows, seen) = (new List<(string Room, string Station, int Places)>(), new SeenRows());
        foreach (var table in tables)
        {
            intake.ReadRows(table, Columns, withGates: false, (row, tally) =>
            {
                row.NeedText(RoomName, "room");
                var room = row.Free(RoomName, "room", CellText.LongestShown);
                var station = row.NeedId(Station, "station");
                var key = $"{Words.Normal(room)}\n{station}";
                seen.Refuse(row, table, Station, key, "this station of this room", "Write the places of both in one row.");
                var places = row.NeedWhole(Places, "number of places");
                if (row.Faults.Count > 0) return;
                seen.Add(row, table, key);
                rows.Add((room, station, places));
                tally.CountKept();
            });
        }

        return [.. rows.GroupBy(r => Words.Normal(r.Room)).Select(g => new Room(g.First().Room, g.ToDictionary(r => r.Station, r => r.Places, StringComparer.Ordinal)))];
    }
}
