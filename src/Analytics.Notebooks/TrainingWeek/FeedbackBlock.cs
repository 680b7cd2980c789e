using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Feedback;
using Analytics.Quantities;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>What the log of earlier planned sessions did to the loads of this week.</summary>
internal static class FeedbackBlock
{
    public static ReportBlock Of(WeekView view)
    {
        var rows = view.Week.Logged.Where(m => view.Only is null || m.Feedback.AthleteId == view.Only.Id).ToList();
        if (rows.Count == 0) return new Together();
        IReadOnlyList<LoggedMove> Those(LoadStep step) => [.. rows.Where(m => m.Feedback.Step == step)];
        var (up, down, hold) = (Those(LoadStep.Progress), Those(LoadStep.BackOff), Those(LoadStep.Hold));
        return new Section("What the log did to the loads",
            up.Count + down.Count == 0 ? "No load moves yet: it takes readings that agree."
                : $"{Words.Capital(string.Join(", ", new[] { Counted(up, "up a step"), Counted(down, "down a step") }.Where(t => t.Length > 0)))}. The sheets hold these loads already; a test after the log speaks instead of it.",
            down.Count == 0 ? new Together() : Table("Loads the log takes down", down, view),
            Fold("Loads the log takes up", up, view), Fold("Loads that stay", hold, view));
    }

    /// <summary>"12 loads of 3 players up a step"; empty for none.</summary>
    private static string Counted(IReadOnlyList<LoggedMove> moves, string where)
        => moves.Count == 0 ? "" : FormattableString.Invariant($"{Words.Count(moves.Count)} {(moves.Count == 1 ? "load" : "loads")} of {Words.Players(moves.Select(m => m.Feedback.AthleteId).Distinct().Count())} {where}");

    private static ReportBlock Fold(string caption, IReadOnlyList<LoggedMove> moves, WeekView view)
        => moves.Count == 0 ? new Together() : new Folded(FormattableString.Invariant($"{caption}: {moves.Count}"), [Table(caption, moves, view)]) { ScreenOnly = true };

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
