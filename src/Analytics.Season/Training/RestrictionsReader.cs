using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Squad;
using Analytics.Season.Tables;
using Analytics.Season.Trials;

namespace Analytics.Season.Training;

/// <summary>Reads <c>restrictions.csv</c>: what players may not do for a while.</summary>
internal static class RestrictionsReader
{
    private static readonly Column From = new("from", needed: true);
    private static readonly Column To = new("to");
    private static readonly Column Out = new("out", needed: true);
    private static readonly Column Note = new("note");

    public static readonly IReadOnlyList<Column> Columns = [TrialTable.AthleteId, From, To, Out, Note];

    /// <summary>The restrictions, in file order; a row that names several things gives one for each.</summary>
    public static List<Restriction> Read(SeasonIntake intake, IEnumerable<Table> tables, SquadList squad, ExerciseCatalogue exercises)
    {
        var restrictions = new List<Restriction>();
        foreach (var table in tables)
        {
            intake.ReadRows(table, Columns, withGates: false, (row, tally) =>
            {
                var athlete = squad.Of(row, TrialTable.AthleteId);
                row.NeedText(From, "first day");
                DateOnly? from = row.Date(From), to = row.Date(To);
                if (from is { } first && to is { } last && last < first)
                    row.Wrong(To, $"the restriction ends on {DateText.Iso(last)}, before it begins on {DateText.Iso(first)}", "Swap or correct the two days.");
                row.NeedText(Out, "word for what is out");
                var note = row.Free(Note, "note");
                List<Restriction> said = [.. row.Parts(Out).Select(part => Make(row, part, exercises)).OfType<Restriction>()];
                if (row.Faults.Count > 0) return;
                restrictions.AddRange(said.Select(r => r with { AthleteId = athlete!.Id, From = from!.Value, To = to, Note = note }));
                tally.CountKept();
            });
        }

        return restrictions;
    }

    private static Restriction? Make(RowCells row, string part, ExerciseCatalogue exercises)
    {
        var nobody = new Restriction { AthleteId = "", From = default };
        var word = Words.Normal(part);
        if (word == TrainingWords.Everything) return nobody with { IsEverything = true };
        if (TrainingWords.Patterns.Find(word) is { } pattern) return nobody with { Pattern = pattern };
        if (TrainingWords.Qualities.Find(word) is { } quality) return nobody with { Quality = quality };
        if (exercises.Find(word) is { } exercise) return nobody with { ExerciseId = exercise.Id };
        row.Unknown(Out, "restriction", part, [TrainingWords.Everything, .. TrainingWords.Patterns.All, .. TrainingWords.Qualities.All, .. exercises.All.Select(e => e.Id)],
            $"Write a pattern ({TrainingWords.Patterns.Accepted}), a quality ({TrainingWords.Qualities.Accepted}), an exercise of exercises.csv, or {TrainingWords.Everything}; join several by +. Until then the player is planned as if he were free.");
        return null;
    }
}
