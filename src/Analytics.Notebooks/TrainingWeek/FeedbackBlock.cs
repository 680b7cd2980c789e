using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Feedback;
using Analytics.Planning.Rules;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>What the log says of the loads planned before: up, stay, down, and why; never on one reading.</summary>
internal static class FeedbackBlock
{
    public static Block Of(WeekContext week)
    {
        if (week.Feedback.Count == 0) return new Together();
        var moved = week.Feedback.Where(f => f.Step != LoadStep.Hold).ToList();
        var held = week.Feedback.Where(f => f.Step == LoadStep.Hold).ToList();
        List<Block> blocks = [];
        if (moved.Count > 0) blocks.Add(Table(week, "Loads that move", moved));
        if (held.Count > 0) blocks.Add(new Folded($"Loads that stay: {held.Count}", [Table(week, "Loads that stay", held)]));
        return new Section("What the log says", FormattableString.Invariant(
            $"A load goes up or down only when {Words.Count((int)week.Rules.Value(RuleIds.ReadingsNeeded))} logged sessions agree. What was not logged is not taken as not done."), blocks);
    }

    private static DataTable Table(WeekContext week, string caption, IReadOnlyList<ExerciseFeedback> rows) => DataTable.Of(caption, rows, t => t
        .Text("Player", f => week.Season.Athletes.FirstOrDefault(a => a.Id == f.AthleteId)?.Name ?? f.AthleteId)
        .Text("Exercise", f => Words.Capital(week.Training.Exercises.Find(f.ExerciseId)?.Name ?? f.ExerciseId))
        .Text("Next load", f => new Cell(WeekFeedback.Note(f) ?? "stays", "", f.Step == LoadStep.Progress ? Tone.Gain : f.Step == LoadStep.BackOff ? Tone.Loss : Tone.Plain))
        .Text("Why", f => Words.Capital(f.Reason)));
}
