using Analytics.Planning.Schemes;
using Analytics.Planning.Weeks;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>Reads <c>week-shapes.csv</c>: the usual week of a phase, one row a session.</summary>
internal static class WeekShapesReader
{
    private static readonly Column Phase = new("phase", needed: true);
    private static readonly Column Weekday = new("weekday");
    private static readonly NumberColumn DaysToGame = new("days_to_game", 1, 6, whole: true);
    private static readonly Column Kind = new("kind", needed: true);
    private static readonly NumberColumn Minutes = CalendarColumns.SessionMinutes(needed: true);
    private static readonly Column Source = new("source");

    public static readonly IReadOnlyList<Column> Columns = [Phase, Weekday, DaysToGame, Kind, Minutes, Source];

    /// <summary>The weeks that could be kept, in the order of the phases.</summary>
    public static List<WeekShape> Read(SeasonIntake intake, IEnumerable<Table> tables, IReadOnlyCollection<string> kinds)
    {
        var (rows, seen) = (new List<(SeasonPhase Phase, ShapeDay Day, string Source)>(), new SeenRows());
        foreach (var table in tables)
        {
            intake.ReadRows(table, Columns, withGates: false, (row, tally) =>
            {
                var phase = row.NeedKnown(Phase, TrainingWords.Phases);
                var weekday = row.Known(Weekday, TrainingWords.Weekdays);
                var days = row.Number(DaysToGame);
                if (row.Faults.Count is 0 && weekday is null == days is null)
                    row.Wrong(Weekday, weekday is null ? "there is neither a weekday nor days_to_game" : "there are a weekday and days_to_game, and one of them is too many", "Fill in one of the two: monday, or 3 for three days before the game.");
                seen.Refuse(row, table, weekday is null ? DaysToGame : Weekday, $"{phase} {weekday} {days}", "a session of this phase and day", "Keep one of the two rows.");
                var kind = row.NeedText(Kind, "kind") is { Length: > 0 } text ? row.Refer(Kind, "kind", text, kinds, "day-kinds.csv") : null;
                var minutes = row.NeedWhole(Minutes, "number of minutes");
                var source = row.Free(Source, "source");
                if (row.Faults.Count > 0) return;
                seen.Add(row, table, $"{phase} {weekday} {days}");
                rows.Add((phase, new ShapeDay(weekday, (int?)days, kind!, minutes), source));
                tally.CountKept();
            });
        }

        return [.. rows.GroupBy(r => r.Phase).OrderBy(g => g.Key).Select(g => new WeekShape(g.Key, [.. g.Select(r => r.Day)], g.Select(r => r.Source).FirstOrDefault(s => s.Length > 0) ?? SetScheme.CommonPractice))];
    }
}
