using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Tables;
using Analytics.Season.Trials;

namespace Analytics.Season.Squad;

/// <summary>Reads spells of restricted availability.</summary>
internal static class AvailabilityReader
{
    private static readonly Column From = new("from", needed: true);
    private static readonly Column To = new("to");
    private static readonly Column Status = new("status", needed: true);
    private static readonly Column Note = new("note");
    private static readonly IReadOnlyList<Column> Columns = [TrialTable.AthleteId, From, To, Status, Note];

    /// <summary>Reads the spells of a table and hands them to the athletes.</summary>
    public static void Read(SeasonIntake intake, Table table, SquadList squad)
        => intake.ReadRows(table, Columns, withGates: false, (row, tally) =>
        {
            var athlete = squad.Of(row, TrialTable.AthleteId);
            row.NeedText(From, "first day");
            DateOnly? from = row.Date(From), to = row.Date(To);
            row.NeedText(Status, "status");
            var status = row.Word(Status, Words.Status);
            if (from is { } first && to is { } last && last < first)
                row.Fault(row.Head.HeadOf(To), row.Text(To), $"the spell ends on {DateText.Iso(last)}, before it begins on {DateText.Iso(first)}", "Swap or correct the two days.");
            if (row.Faults.Count > 0) return;
            var spell = new Absence(from!.Value, to, status!.Value.ToString().ToLowerInvariant());
            if (athlete!.Absences.FirstOrDefault(a => Overlap(a, spell)) is { } other)
                intake.Note(table.Path, $"Line {row.Line}: {CellMarks.Person(athlete.Id)} is {spell.Status} {Days(spell)} and {other.Status} {Days(other)}; the spells overlap, both were kept.");
            squad.Set(athlete with { Absences = [.. athlete.Absences.Append(spell).OrderBy(a => a.From)] });
            tally.CountKept();
        });

    /// <summary>The days of a spell in words.</summary>
    public static string Days(Absence spell) => spell.To is { } to ? $"from {DateText.Iso(spell.From)} to {DateText.Iso(to)}" : $"since {DateText.Iso(spell.From)}";

    private static bool Overlap(Absence a, Absence b) => a.From <= (b.To ?? DateOnly.MaxValue) && b.From <= (a.To ?? DateOnly.MaxValue);
}
