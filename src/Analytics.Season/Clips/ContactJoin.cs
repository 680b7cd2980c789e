using Analytics.Metrics.Trials;
using Analytics.Season.Cells;
using Analytics.Season.Intake;
using Analytics.Season.Squad;

namespace Analytics.Season.Clips;

/// <summary>Makes repetitions of the rows of contact tables and joins them with their clip files.</summary>
internal sealed class ContactJoin(SeasonSettings settings, SquadList squad)
{
    /// <summary>Joins all days.</summary>
    public void JoinAll(SeasonIntake intake, TestingReader testing)
    {
        foreach (var day in testing.Days) Join(intake, day, testing.Clips.GetValueOrDefault(day.Date));
        foreach (var (date, clips) in testing.Clips)
            if (testing.Days.All(d => d.Date != date)) clips.NoteUnused(intake);
        RateCheck.HoldBack(testing.Days);
    }

    private void Join(SeasonIntake intake, CandidateDay day, ClipShelf? clips)
    {
        intake.Cancellation.ThrowIfCancellationRequested();
        var repetitions = Repetition.Of(day.Candidates);
        if (repetitions.Count > 0)
        {
            var maker = new ContactMaker(intake, settings.Video, squad, clips, repetitions);
            var made = repetitions.ToDictionary(r => r.Rows[0].Trial, r => r, (IEqualityComparer<Trial>)ReferenceEqualityComparer.Instance);
            var joined = new List<Candidate>(day.Candidates.Count);
            foreach (var candidate in day.Candidates)
            {
                if (candidate.Trial is not ContactRow) joined.Add(candidate);
                else if (made.TryGetValue(candidate.Trial, out var repetition) && maker.Make(repetition) is { } trial) joined.Add(trial);
            }

            day.Replace(joined);
            NoteMissing(intake, repetitions, clips);
        }

        clips?.NoteUnused(intake);
    }

    /// <summary>One remark a table on the clips that have no points.</summary>
    private static void NoteMissing(SeasonIntake intake, IReadOnlyList<Repetition> repetitions, ClipShelf? clips)
    {
        foreach (var table in repetitions.Where(r => clips?.Has(r.Clip) is not true).GroupBy(r => r.Rows[0].Table.Tally.Path))
        {
            var names = table.Select(r => r.Clip).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
            var shown = string.Join(", ", names.Take(5).Select(CellText.Show));
            intake.Note(table.Key, $"There is no {ClipShelf.FolderName}/{CellText.Show(names[0])}.csv{(names.Count > 1 ? $" and no such file for {names.Count - 1} more ({shown}{(names.Count > 5 ? " ..." : "")})" : "")}, so only the times of events are used.");
        }
    }
}
