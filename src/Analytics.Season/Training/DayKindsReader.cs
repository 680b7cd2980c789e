using Analytics.Planning.Exercises;
using Analytics.Planning.Schemes;
using Analytics.Planning.Weeks;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>Reads <c>day-kinds.csv</c>: one row for each kind of day and quality, or for each half of the body in it.</summary>
internal static class DayKindsReader
{
    private static readonly Column Kind = new("kind", needed: true);
    private static readonly Column Name = new("name");
    private static readonly Column Quality = new("quality", needed: true);
    private static readonly Column Half = new("half");
    private static readonly NumberColumn Least = new("least", 0, 10, whole: true);
    private static readonly NumberColumn Most = new("most", 0, 10, whole: true, needed: true);
    private static readonly Column OwnWork = new("own_work");
    private static readonly NumberColumn LeastPercent = new("least_percent", 1, 130);
    private static readonly NumberColumn MostPercent = new("most_percent", 1, 130);
    private static readonly Column Source = new("source");

    public static readonly IReadOnlyList<Column> Columns = [Kind, Name, Quality, Half, Least, Most, OwnWork, LeastPercent, MostPercent, Source];

    /// <summary>The kinds that could be kept, in the order of their first rows.</summary>
    public static List<DayKind> Read(SeasonIntake intake, IEnumerable<Table> tables)
    {
        var (kinds, seen) = (new List<DayKind>(), new SeenRows());
        foreach (var table in tables)
        {
            intake.ReadRows(table, Columns, withGates: false, (row, tally) =>
            {
                var id = row.NeedId(Kind, "kind of day");
                if (id == DayKind.Game) row.Wrong(Kind, "'game' is the word of a game in the calendar, and no kind of training day", "Call the kind something else.");
                var quality = row.NeedKnown(Quality, TrainingWords.Qualities);
                var half = row.Known(Half, TrainingWords.Halves) ?? BodyHalf.Any;
                // A row for either half of the body concerns what a row for one of them does.
                foreach (var other in Enum.GetValues<BodyHalf>().Where(o => o == half || o == BodyHalf.Any || half == BodyHalf.Any))
                    seen.Refuse(row, table, Quality, $"{id} {quality} {other}", "this quality of this kind of day", "Keep one of the two rows, or let one be of the lower and one of the upper half of the body.");
                double least = row.Number(Least) ?? 0, most = row.NeedWhole(Most, "greatest number of exercises");
                if (row.Faults.Count is 0) row.Rising(Most, least, most, "number of exercises");
                var own = row.Word(OwnWork, Words.YesNo) ?? false;
                if (most is 0 && !own && row.Faults.Count is 0) row.Wrong(Most, "the row allows nothing: no exercise in the shared part, and no own work", "Raise most, write yes in own_work, or delete the row; of a quality without a row nothing is done.");
                double? lightest = row.Number(LeastPercent), heaviest = row.Number(MostPercent);
                row.Rising(MostPercent, lightest, heaviest, "range of per cent");
                var (name, source) = (row.Free(Name, "name", 60), row.Free(Source, "source"));
                if (row.Faults.Count > 0) return;
                seen.Add(row, table, $"{id} {quality} {half}");
                Add(intake, table, row, kinds, new DayKind(id, name, [new DayDemand(quality, (int)least, (int)most, own) { Half = half, LeastPercent = lightest, MostPercent = heaviest }], source));
                tally.CountKept();
            });
        }

        return [.. kinds.Select(k => k with { Name = k.Name.Length > 0 ? k.Name : k.Id.Replace('_', ' '), Source = k.Source.Length > 0 ? k.Source : SetScheme.CommonPractice })];
    }

    private static void Add(SeasonIntake intake, Table table, RowCells row, List<DayKind> kinds, DayKind said)
    {
        var at = kinds.FindIndex(k => k.Id == said.Id);
        if (at < 0)
        {
            kinds.Add(said);
            return;
        }

        var known = kinds[at];
        Differs("name", known.Name, said.Name);
        Differs("source", known.Source, said.Source);
        kinds[at] = known with { Name = known.Name.Length > 0 ? known.Name : said.Name, Source = known.Source.Length > 0 ? known.Source : said.Source, Demands = [.. known.Demands, .. said.Demands] };

        void Differs(string what, string first, string second)
        {
            if (first.Length > 0 && second.Length > 0 && first != second)
                intake.Note(table.Path, $"Line {row.Line} gives the kind '{CellText.Show(said.Id)}' another {what}, '{CellText.Show(second)}'; '{CellText.Show(first)}' was taken.");
        }
    }
}
