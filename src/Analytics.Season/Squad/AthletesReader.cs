using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Files;
using Analytics.Season.Intake;
using Analytics.Season.Tables;
using Analytics.Season.Trials;

namespace Analytics.Season.Squad;

/// <summary>Reads the athlete list.</summary>
internal static class AthletesReader
{
    private static readonly Column Name = new("name", needed: true);
    private static readonly Column Position = new("position");
    private static readonly Column Group = new("group");
    private static readonly NumberColumn BirthYear = new("birth_year", 1930, 2030, whole: true);
    private static readonly NumberColumn TrainingYears = new("training_years", 0, 40);
    private static readonly IReadOnlyList<Column> Columns = [TrialTable.AthleteId, Name, Position, Group, BodyTable.Stature, BirthYear, TrainingYears];

    /// <summary>Reads the athletes of a table into the list.</summary>
    public static void Read(SeasonIntake intake, Table table, SquadList squad)
    {
        var lines = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        intake.ReadRows(table, Columns, withGates: false, (row, tally) =>
        {
            var id = row.NeedText(TrialTable.AthleteId, "athlete_id");
            var name = row.NeedText(Name, "name");
            if (lines.TryGetValue(id, out var earlier))
                row.Fault(row.Head.HeadOf(TrialTable.AthleteId), id, $"athlete_id '{CellMarks.Person(id)}' already stands on line {earlier} ({CellMarks.Person(squad.Find(id)!.Name)})", "Give each athlete an identifier of his own, or delete the second row.");
            if (id.Any(char.IsControl) || id.Length > CellText.LongestShown)
                row.Fault(row.Head.HeadOf(TrialTable.AthleteId), id, "the identifier is too long or holds line breaks", "Use a short identifier, such as P001.");
            if (row.Faults.Count > 0) return;
            var athlete = Make(row, tally, id, name);
            lines[id] = row.Line;
            squad.Set(athlete);
            tally.CountKept();
        });
    }

    /// <summary>A wrong optional cell is left out and listed, but the athlete stays: without him all his results would be held back.</summary>
    private static Athlete Make(RowCells row, FileTally tally, string id, string name)
    {
        row.About = id;
        var stature = row.Quantity(BodyTable.Stature);
        double? born = row.Number(BirthYear), trained = row.Number(TrainingYears);
        foreach (var fault in row.TakeFaultsFrom(0))
            tally.HoldBack(row.Line, [fault with { Reason = fault.Reason + "; the cell was left out, the athlete kept" }], id, rows: 0);
        string position = row.Text(Position), group = row.Text(Group);
        return new Athlete
        {
            Id = id,
            Name = name,
            Position = position,
            Group = group.Length > 0 ? group : position,
            Stature = stature is { } metres ? Length.FromMetres(metres) : null,
            BirthYear = born is { } year ? (int)year : null,
            TrainingYears = trained,
        };
    }

    /// <summary>What stands in the way of using the athlete list, in one sentence.</summary>
    public static InputFault Unusable(IEnumerable<FileTally> tallies)
    {
        var first = tallies.SelectMany(t => t.HeldBack).FirstOrDefault();
        return first is null
            ? new InputFault("it has a head but no athletes.", "Write one row for each athlete.")
            : new InputFault(first.Line > 0 ? $"line {first.Line}: {first.Reason}" : first.Reason, first.Remedy);
    }
}
