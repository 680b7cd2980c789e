using Analytics.Metrics.Load;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Training;
using Analytics.Season.Trials;

namespace Analytics.Season.Squad;

/// <summary>What one row says of a session.</summary>
/// <param name="Minutes">Length.</param>
/// <param name="Exertion">Rating.</param>
/// <param name="Contacts">Jump contacts.</param>
/// <param name="Exercise">Sets of a lift.</param>
internal readonly record struct SessionRow(double? Minutes, double? Exertion, double? Contacts, ExerciseSets? Exercise)
{
    /// <summary>More repetitions in one row look like a slip; common practice, no source.</summary>
    private const int MostRepetitions = 500;

    /// <summary>Reads the cells; a fault in the row says what is wrong with them.</summary>
    public static SessionRow Read(RowCells row)
        => new(row.Number(SessionColumns.Minutes), row.Number(SessionColumns.Exertion), row.Number(SessionColumns.Contacts), ReadExercise(row));

    // What the kit's own plans name may be logged by that name.
    private static bool IsExercise(string id) => ShippedTraining.In("lb").Exercises.Find(id) is not null;

    /// <summary>An exercise is whole or none: lift, sets, repetitions and load.</summary>
    private static ExerciseSets? ReadExercise(RowCells row)
    {
        if (new[] { SessionColumns.Lift, SessionColumns.Sets, SessionColumns.Repetitions }.All(c => row.Text(c).Length is 0) && row.Head[SessionColumns.Load].All(p => row.TextAt(p).Length is 0)) return null;
        var before = row.Faults.Count;
        var lift = row.NeedIdentifier(SessionColumns.Lift, "lift", KnownLift.Ids, IsExercise);
        int sets = row.NeedWhole(SessionColumns.Sets, "number of sets"), repetitions = row.NeedWhole(SessionColumns.Repetitions, "number of repetitions in a set");
        var load = row.Quantity(SessionColumns.Load) ?? double.NaN;
        if (double.IsNaN(load) && row.Faults.Count == before)
            row.Fault(row.Head.HeadOf(SessionColumns.Load), "", "there is no load", "Fill in the load; for lifts of the own body the added load, 0 for none.");
        LoadLimits.Check(row, SessionColumns.Load, KnownLift.Of(lift), load);
        if (sets * repetitions > MostRepetitions)
            row.Fault(row.Head.HeadOf(SessionColumns.Repetitions), row.Text(SessionColumns.Repetitions), $"{sets} sets of {repetitions} are {sets * repetitions} repetitions; at most {MostRepetitions} are allowed in a row", "Write the repetitions of one set, not of all.");
        return row.Faults.Count == before ? new ExerciseSets(lift, sets, repetitions, Mass.FromKilograms(load)) : null;
    }
}
