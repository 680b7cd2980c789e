using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Planning.Feedback;
using Analytics.Quantities;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>What the log of earlier planned sessions says about the next load.</summary>
internal static class FeedbackBlock
{
    public static ReportBlock Of(WeekView view)
    {
        var rows = view.Week.Feedback.Where(f => view.Only is null || f.AthleteId == view.Only.Id)
            .Where(f => view.Week.Squad.Players.Any(p => p.Id == f.AthleteId)).OrderBy(f => f.Step == LoadStep.Hold).ToList();
        if (rows.Count == 0) return new Together();
        var moved = rows.Where(f => f.Step != LoadStep.Hold).ToList();
        return new Section("What the log says about the next loads",
            moved.Count == 0 ? "No load moves yet: it takes readings that agree." : "The sheets hold loads from the tests; where the log says otherwise, the coach decides.",
            moved.Count == 0 ? new Together() : Table("Loads that move", moved, view),
            new Folded(FormattableString.Invariant($"Loads that stay: {rows.Count - moved.Count}"), [Table("Loads that stay", [.. rows.Except(moved)], view)]) { ScreenOnly = true });
    }

    private static DataTable Table(string caption, IReadOnlyList<ExerciseFeedback> rows, WeekView view)
    {
        var unit = view.Week.Training.Weights.Unit;
        string? Load(double? kilograms) => kilograms is { } kg ? WeekWords.Load(Mass.FromKilograms(kg), unit) + "\u2009" + unit : null;
        return DataTable.Of(caption, rows, t => t
            .Text("Player", f => view.Name(f.AthleteId))
            .Text("Exercise", f => view.Week.Training.Exercises.Find(f.ExerciseId)?.Name ?? f.ExerciseId)
            .Text("Step", f => f.Step switch { LoadStep.Progress => new Cell("up a step", "", Tone.Gain), LoadStep.BackOff => new Cell("down a step", "", Tone.Loss), _ => new Cell("hold") })
            .Numeric("Planned", "", f => Load(f.PlannedKilograms))
            .Numeric("Next", "", f => f.PlannedKilograms is { } kg ? Figures.Plain(unit == "lb" ? Mass.FromKilograms(kg * f.Factor).Pounds : kg * f.Factor, 0, unit) : null)
            .Text("Why", f => f.Reason), 200);
    }
}
