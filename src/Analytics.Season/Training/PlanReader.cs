using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Squad;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>What a plan may name.</summary>
internal sealed record PlanNames(SeasonSettings Settings, SquadList Squad, IReadOnlyCollection<string> Groups, ExerciseCatalogue Exercises, IReadOnlyCollection<string> Schemes);

/// <summary>Reads <c>plan.csv</c>: an earlier plan, and what the coach chose.</summary>
internal static class PlanReader
{
    /// <summary>The choices that could be kept, in file order.</summary>
    public static List<EarlierChoice> Read(SeasonIntake intake, IEnumerable<Table> tables, PlanNames names)
    {
        var (choices, seen, wanted) = (new List<EarlierChoice>(), new SeenRows(), new SeenRows());
        var ids = names.Exercises.All.Select(e => e.Id).ToList();
        foreach (var table in tables)
        {
            intake.ReadRows(table, PlanColumns.All, withGates: false, (row, tally) =>
            {
                var choice = Make(row, table, names, ids);
                if (choice is null) return;
                var who = $"{choice.Date:o}\n{choice.Start:o}\n{choice.Group}\n{choice.AthleteId}\n{choice.ExerciseId}";
                var key = $"{who}\n{choice.IsOwnWork}\n{choice.SchemeId}";
                seen.Refuse(row, table, PlanColumns.Exercise, key, choice.Start is null ? "the same exercise of the same day" : "the same exercise of the same session", choice.Start is null ? "Delete one of the two rows, or write the start of its session into each." : "Delete one of the two rows.");
                // "Keep" and "never" cannot both be done.
                if (row.Faults.Count is 0 && choice.Force is not ChoiceForce.Planned)
                    wanted.Refuse(row, table, PlanColumns.Keep, $"{who}\n{Other(choice.Force)}", $"the opposite ({Other(choice.Force).ToString().ToLowerInvariant()}) of this exercise and day", "Keep the row that holds.");
                if (row.Faults.Count > 0) return;
                seen.Add(row, table, key);
                wanted.Add(row, table, $"{who}\n{choice.Force}");
                choices.Add(choice);
                tally.CountKept();
            });
        }

        return choices;
    }

    private static ChoiceForce Other(ChoiceForce force) => force is ChoiceForce.Keep ? ChoiceForce.Never : ChoiceForce.Keep;

    private static EarlierChoice? Make(RowCells row, Table table, PlanNames names, IReadOnlyCollection<string> ids)
    {
        var date = row.DayOf(PlanColumns.Date, names.Settings);
        string group = SheetCell.Read(row.Text(PlanColumns.Group)), athlete = row.Text(PlanColumns.Athlete);
        if (group.Length is 0 == athlete.Length is 0)
            row.Wrong(PlanColumns.Group, group.Length is 0 ? "the row names neither a group nor a player" : "the row names a group and a player, and one of them is too many", "Fill in one of group and athlete_id.");
        var start = row.Time(PlanColumns.Start);
        var player = athlete.Length > 0 ? names.Squad.Of(row, PlanColumns.Athlete) : null;
        var squad = group.Length > 0 ? row.Refer(PlanColumns.Group, "group", group, names.Groups, "athletes.csv") : null;
        var exercise = SheetCell.Read(row.NeedText(PlanColumns.Exercise, "exercise")) is { Length: > 0 } named ? row.Refer(PlanColumns.Exercise, "exercise", named, ids, "exercises.csv") : null;
        var scheme = SheetCell.Read(row.Text(PlanColumns.Scheme)) is { Length: > 0 } sets ? row.Refer(PlanColumns.Scheme, "scheme", sets, names.Schemes, "schemes.csv") : null;
        var isOwn = row.Known(PlanColumns.Part, TrainingWords.Parts) ?? player is not null;
        var force = row.Known(PlanColumns.Keep, TrainingWords.Forces) ?? ChoiceForce.Planned;
        double? number = row.Number(PlanColumns.Sets), repetitions = row.Number(PlanColumns.Repetitions), load = row.Quantity(PlanColumns.Load);
        return row.Faults.Count > 0 ? null : new EarlierChoice
        {
            Date = date!.Value,
            Start = start,
            Group = squad,
            AthleteId = player?.Id,
            ExerciseId = exercise!,
            SchemeId = scheme,
            IsOwnWork = isOwn,
            Force = force,
            Sets = (int?)number,
            Repetitions = (int?)repetitions,
            LoadKilograms = load,
            Place = FormattableString.Invariant($"{table.Path} line {row.Line}"),
        };
    }
}
