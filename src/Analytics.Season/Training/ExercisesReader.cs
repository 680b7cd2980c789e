using Analytics.Planning.Exercises;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>Reads <c>exercises.csv</c>.</summary>
internal static class ExercisesReader
{
    /// <summary>The exercises that could be kept, in file order.</summary>
    public static List<Exercise> Read(SeasonIntake intake, IEnumerable<Table> tables)
        => NamedRows.Read(intake, tables, ExerciseColumns.All, ExerciseColumns.Exercise, "exercise", (row, id) =>
        {
            CheckId(row, id);
            return Make(row, id);
        });

    // A restriction names patterns, qualities and exercises in one column.
    private static void CheckId(RowCells row, string id)
    {
        if (id == TrainingWords.Everything || TrainingWords.Patterns.Find(id) is not null || TrainingWords.Qualities.Find(id) is not null)
            row.Wrong(ExerciseColumns.Exercise, $"'{CellText.Show(id)}' is the word of a pattern, of a quality or of all exercises, and cannot name one", "Name the exercise more closely, such as back_squat.");
    }

    private static Exercise Make(RowCells row, string id)
    {
        var pattern = row.NeedKnown(ExerciseColumns.Pattern, TrainingWords.Patterns);
        var quality = row.NeedKnown(ExerciseColumns.Quality, TrainingWords.Qualities);
        var load = ExerciseLoad.Read(row);
        var seconds = row.NeedQuantity(ExerciseColumns.RepetitionTime, "time of a repetition");
        var contacts = (int)(row.Number(ExerciseColumns.Contacts) ?? 0);
        var impact = row.Known(ExerciseColumns.Impact, TrainingWords.Impacts);
        if (contacts is 0 && impact > Impact.None && row.Faults.Count is 0)
            row.Wrong(ExerciseColumns.Impact, "an impact is given, but no jump contacts", "Fill in jump_contacts of one repetition, or write none.");
        if (contacts > 0 && impact is null && row.Text(ExerciseColumns.Impact).Length is 0)
            row.Wrong(ExerciseColumns.Impact, "there are jump contacts, but no impact", $"Say how hard the landings are: {TrainingWords.Impacts.Accepted}.");
        var name = row.Free(ExerciseColumns.Name, "name", 100);
        var implement = row.Id(ExerciseColumns.Implement, "implement");
        return new Exercise
        {
            Id = id,
            Name = name.Length > 0 ? name : id.Replace('_', ' '),
            Pattern = pattern,
            Quality = quality,
            Basis = load.Basis,
            OwnMaximumPercent = load.OwnMaximumPercent,
            LeastPercent = load.LeastPercent,
            MostPercent = load.MostPercent,
            LeastHeight = load.LeastHeight,
            MostHeight = load.MostHeight,
            IsUnilateral = row.Word(ExerciseColumns.Unilateral, Words.YesNo) ?? false,
            RepetitionTime = Duration.FromSeconds(double.IsNaN(seconds) ? 1 : seconds),
            JumpContacts = contacts,
            Impact = impact ?? Impact.None,
            Stations = [.. row.Parts(ExerciseColumns.Stations).Select(Words.Normal).Distinct()],
            Implement = implement.Length > 0 ? implement : null,
            Preference = (int)(row.Number(ExerciseColumns.Preference) ?? 2),
            LeastSquatRatio = row.Number(ExerciseColumns.SquatRatio),
            MostBodyMass = row.Quantity(ExerciseColumns.MostBodyMass) is { } kilograms ? Mass.FromKilograms(kilograms) : null,
            LeastTrainingYears = row.Number(ExerciseColumns.TrainingYears),
            Prerequisite = row.Free(ExerciseColumns.Prerequisite, "prerequisite"),
            Caution = row.Free(ExerciseColumns.Caution, "caution"),
        };
    }
}
