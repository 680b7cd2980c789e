using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Planning.Feedback;
using Analytics.Quantities;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>What the log of earlier planned sessions did to the loads of this week.</summary>
internal static class FeedbackBlock
{
    public static ReportBlock Of(WeekView view)
    {
        var rows = view.Week.Logged.Where(m => view.Only is null || m.Feedback.AthleteId == view.Only.Id).OrderBy(m => m.Feedback.Step == LoadStep.Hold).ToList();
        if (rows.Count == 0) return new Together();
        var moved = rows.Where(m => m.Base is not null || m.Feedback.Step != LoadStep.Hold).ToList();
        return new Section("What the log did to the loads",
            moved.Count == 0 ? "No load moves yet: it takes readings that agree." : "The sheets hold these loads already; a test after the log speaks instead of it.",
            moved.Count == 0 ? new Together() : Table("Loads by the log", moved, view),
            rows.Count == moved.Count ? new Together() : new Folded(FormattableString.Invariant($"Loads that stay: {rows.Count - moved.Count}"), [Table("Loads that stay", [.. rows.Except(moved)], view)]) { ScreenOnly = true });
    }

    private static DataTable Table(string caption, IReadOnlyList<LoggedMove> rows, WeekView view)
    {
        var unit = view.Week.Training.Weights.Unit;
        return DataTable.Of(caption, rows, t => t
            .Text("Player", m => view.Name(m.Feedback.AthleteId))
            .Text("Exercise", m => view.Week.Training.Exercises.Find(m.Feedback.ExerciseId)?.Name ?? m.Feedback.ExerciseId)
            .Text("Log says", m => m.Feedback.Step switch { LoadStep.Progress => new Cell("up a step", "", Tone.Gain), LoadStep.BackOff => new Cell("down a step", "", Tone.Loss), _ => new Cell("hold") })
            .Numeric("Planned last", "", m => m.Feedback.PlannedKilograms is { } kg ? WeekWords.Load(Mass.FromKilograms(kg), unit) + "\u2009" + unit : null)
            .Text("This week", m => new Cell(ThisWeek(view, m.Feedback), m.Text))
            .Text("Why", m => m.Feedback.Reason), 200);
    }

    /// <summary>"102.5 kg, Mon 15 June": the top load of each session that has the exercise.</summary>
    private static string ThisWeek(WeekView view, ExerciseFeedback said)
    {
        var unit = view.Week.Training.Weights.Unit;
        var loads = view.Week.Sessions.Where(s => s.Players.Contains(said.AthleteId)).SelectMany(s => s.For(said.AthleteId).Where(i => i.Exercise.Id == said.ExerciseId)
            .Select(i => (s.Slot.Date, Load: view.Week.Load(said.AthleteId, i, s.Slot.Date), Item: i))).ToList();
        return loads.Count == 0 ? "not in this week" : string.Join("; ", loads.Select(l =>
            $"{WeekWords.Sets(l.Item)}{(l.Load.Working.Count > 0 ? $" with {WeekWords.Load(l.Load.Working.MaxBy(w => w.Kilograms), unit)}\u2009{unit}" : "")}, {WeekWords.ShortDay(l.Date)}"));
    }
}
