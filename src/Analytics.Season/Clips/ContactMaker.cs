using System.Globalization;
using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Checks;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Squad;
using Analytics.Season.Trials;

namespace Analytics.Season.Clips;

/// <summary>Makes one repetition of its rows and its clip files.</summary>
internal sealed class ContactMaker(SeasonIntake intake, VideoSettings video, SquadList squad, ClipShelf? clips, IReadOnlyList<Repetition> repetitions)
{
    // Limits outside which a time to contact is a slip; common practice, no source.
    private const double ShortestTime = 0.05, LongestTime = 5;

    private readonly Dictionary<string, (FrameClock? Clock, ClipFiles Files)> clocks = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, int> named = repetitions.CountBy(r => r.Clip, StringComparer.OrdinalIgnoreCase).ToDictionary(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> shared = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The repetition; null when all its rows are held back.</summary>
    public Candidate? Make(Repetition repetition)
    {
        var first = (ContactRow)repetition.Rows[0].Trial;
        var (stamps, files) = Stamps(repetition.Clip);
        files.Share();
        var rate = first.RateHertz is { } typed ? Frequency.FromHertz(typed) : video.Rate;
        if ((stamps ?? (rate is { } known ? FrameClock.FromRate(known) : null)) is not { } clock)
        {
            foreach (var row in repetition.Rows) row.HoldBack(new CellFault(ContactTable.Rate.Name, "", "there is no frame rate", $"Fill in rate_hz, set \"rate_hz\" under \"video\" in season.json, or add {ClipShelf.FolderName}/{CellText.Show(repetition.Clip)}.times.csv."));
            files.HoldBack(first);
            return null;
        }

        if (stamps is not null && first.RateHertz is { } said && Math.Abs(said - stamps.Rate.Hertz) > 0.02 * stamps.Rate.Hertz)
            intake.Note(first.Source!.File, string.Create(CultureInfo.InvariantCulture, $"Line {first.Source.Line} gives the clip '{CellText.Show(repetition.Clip)}' {said:0.###} Hz, its time stamps {stamps.Rate.Hertz:0.###} Hz; the time stamps were used."));
        var kept = Readings(repetition, clock);
        if (kept.Count is 0)
        {
            files.HoldBack(first);
            return null;
        }

        return WithPoints(repetition, kept[0].Row, Trial(repetition, kept, clock), files);
    }

    private Candidate? WithPoints(Repetition repetition, Candidate row, ContactTrial trial, ClipFiles files)
    {
        var isChecked = repetition.Rows.Any(r => r.IsChecked);
        if (clips?.Points(repetition.Clip) is not { } entry) return new Candidate(trial, row.Table, isChecked, files);
        if (named[repetition.Clip] > 1)
        {
            HoldBackShared(repetition.Clip, entry.Path);
            return new Candidate(trial, row.Table, isChecked, files);
        }

        var outcome = new ClipReader(intake, video).Read(entry.Path, trial, squad.Find(trial.AthleteId)!, isChecked, files);
        var whole = new Candidate(trial with { Digitised = outcome.Clip, Travel = outcome.Travel }, row.Table, isChecked, files);
        if (outcome.RowFault is not { } fault) return whole;
        whole.HoldBack(fault);
        return null;
    }

    /// <summary>Points belong to one body in one repetition; whose they are cannot be told where two rows name them.</summary>
    private void HoldBackShared(string clip, string path)
    {
        if (!shared.Add(clip) || PointsReader.Read(intake, path) is not { GoodRows: > 0 } points) return;
        var whose = string.Join(" and ", repetitions.Where(r => string.Equals(r.Clip, clip, StringComparison.OrdinalIgnoreCase)).Take(3).Select(r => $"{CellMarks.Person(r.AthleteId)} attempt {r.Attempt}"));
        points.Tally.HoldBackRows(new CellFault("", "", $"several repetitions name this clip ({whose}), so it cannot be told whose points these are; they were not used, the times of the rows stay", "Make one file of points for each repetition, and give each row the name of its own."), points.GoodRows);
    }

    private ContactTrial Trial(Repetition repetition, List<(Candidate Row, ContactReading Reading)> kept, FrameClock clock)
    {
        var row = (ContactRow)kept[0].Row.Trial;
        return new ContactTrial
        {
            AthleteId = row.AthleteId,
            Date = row.Date,
            Source = row.Source,
            Attempt = repetition.Attempt,
            Clip = repetition.Clip,
            Clock = clock,
            Readings = [.. kept.Select(k => k.Reading).OrderBy(r => r.Number)],
            Shutter = video.Shutter,
            Gap = row.Gap,
            Against = row.Against,
            Travel = row.Travel,
            Steps = kept.Select(k => ((ContactRow)k.Row.Trial).Steps).FirstOrDefault(s => s.Count > 0) ?? [],
            Window = video.ContactWindow,
        };
    }

    /// <summary>The readings that are in order; the other rows are held back.</summary>
    private List<(Candidate Row, ContactReading Reading)> Readings(Repetition repetition, FrameClock clock)
    {
        var kept = new List<(Candidate Row, ContactReading Reading)>();
        var taken = repetition.Rows.Select(r => ((ContactRow)r.Trial).Reading).OfType<int>().ToHashSet();
        var lines = new Dictionary<int, int>();
        var next = 1;
        foreach (var candidate in repetition.Rows)
        {
            var row = (ContactRow)candidate.Trial;
            while (row.Reading is null && taken.Contains(next)) next++;
            var number = row.Reading ?? next++;
            var reading = new ContactReading(number, row.FirstMovement, row.Contact);
            if (Fault(candidate, row, kept.Count > 0 ? (ContactRow)kept[0].Row.Trial : row, reading, clock, lines) is { } fault) candidate.HoldBack(fault);
            else kept.Add((candidate, reading));
            lines.TryAdd(number, row.Source!.Line);
        }

        return kept;
    }

    private CellFault? Fault(Candidate candidate, ContactRow row, ContactRow first, ContactReading reading, FrameClock clock, Dictionary<int, int> lines)
    {
        var head = candidate.Table.Head;
        if (lines.TryGetValue(reading.Number, out var line))
            return new CellFault(ContactTable.Reading.Name, CellText.Number(reading.Number), $"reading {reading.Number} of attempt {row.Attempt} already stands in line {line}", "Number the readings 1, 2, 3, or delete the wrong row.");
        if (row.DiffersIn(first) is { } column)
            return new CellFault(column, "", $"'{column}' differs from line {first.Source!.Line}, which is a reading of the same repetition", "Make the rows alike but for reading, frames and rows of the picture; or give another attempt its own number.");
        if (reading.Fault(clock, video.Shutter) is { } wrong)
            return new CellFault(ContactTable.ContactFrame.Name, CellText.Number(row.Contact.Frame), wrong, "Correct the frame, or the time stamps of the clip.");
        if (StepFault(row, clock) is { } step) return new CellFault(StepWords.Column.Name, "", step, "Correct the frames of the steps, or empty the cell.");
        var seconds = clock.Between(row.FirstMovement.Frame, row.Contact.Frame).Seconds;
        var how = string.Create(CultureInfo.InvariantCulture, $"{seconds:0.000} s from frame {row.FirstMovement.Frame} to frame {row.Contact.Frame} at {clock.Rate.Hertz:0.##} Hz");
        if (seconds is < ShortestTime or > LongestTime)
            return new CellFault(head.HeadOf(ContactTable.ContactFrame), CellText.Number(row.Contact.Frame), string.Create(CultureInfo.InvariantCulture, $"{how} is no time to contact; allowed {ShortestTime} to {LongestTime} s"), "Check both frames, and the rate at which the clip was recorded.");
        if (row.Gap is not { } gap || candidate.IsChecked) return null;
        var fastest = FastestRun.ShortestTime(gap.Metres, TimingMethod.Video, StartType.FirstMovement);
        return seconds + clock.Interval.Seconds >= fastest ? null : new CellFault(head.HeadOf(ContactTable.Gap), "", string.Create(CultureInfo.InvariantCulture, $"a gap of {gap.Metres:0.##} m in {how} is faster than anyone runs from first movement; allowed from {fastest:0.00} s"), "Check the gap and its unit, both frames, and the rate at which the clip was recorded.");
    }

    private static string? StepFault(ContactRow row, FrameClock clock)
    {
        if (row.Steps.FirstOrDefault(s => !clock.Covers(s.TouchdownFrame) || (s.ToeOffFrame is { } off && !clock.Covers(off))) is { } outside)
            return $"the step at frame {outside.TouchdownFrame} lies outside the time stamps, frames {clock.FirstFrame} to {clock.FirstFrame + clock.FrameCount - 1}";
        try
        {
            StepTimes.Of(clock, row.Steps);
            return null;
        }
        catch (ArgumentException order)
        {
            return order.Message.Split(" (Parameter", 2)[0].TrimEnd('.');
        }
    }

    /// <summary>Clock of a clip with time stamps, read once.</summary>
    private (FrameClock? Clock, ClipFiles Files) Stamps(string clip)
    {
        if (clocks.TryGetValue(clip, out var known)) return known;
        var files = new ClipFiles();
        var clock = clips?.Stamps(clip) is { } entry ? StampsReader.Read(intake, entry.Path, files) : null;
        clocks.Add(clip, (clock, files));
        return (clock, files);
    }
}
