using Analytics.Metrics.Trials;
using Analytics.Season.Cells;
using Analytics.Season.Clips;
using Analytics.Season.Columns;
using Analytics.Season.Files;
using Analytics.Season.Squad;
using Analytics.Season.Tables;
using Analytics.Season.Trials;

namespace Analytics.Season.Intake;

/// <summary>Reads the testing days of a season into candidates.</summary>
internal sealed class TestingReader(SeasonIntake intake, SeasonSettings settings, SquadList squad)
{
    /// <summary>Folder of the testing days.</summary>
    public const string FolderName = "testing";

    private static readonly string[] TextEndings = [".csv", ".tsv", ".txt"];
    private readonly SortedDictionary<DateOnly, CandidateDay> days = [];
    private readonly List<TestingFile> files = [];

    /// <summary>Clip files of the days that have any.</summary>
    public SortedDictionary<DateOnly, ClipShelf> Clips { get; } = [];

    /// <summary>The days, by date.</summary>
    public IReadOnlyCollection<CandidateDay> Days => days.Values;

    /// <summary>Reads everything in the testing folder. Files are read side by side and put together in order.</summary>
    /// <param name="folder">Path of the folder inside the season.</param>
    public void ReadAll(string folder)
    {
        files.Clear();
        foreach (var entry in List(folder)) Find(entry);
        try
        {
            Parallel.ForEach(files, new ParallelOptions { CancellationToken = intake.Cancellation, MaxDegreeOfParallelism = Environment.ProcessorCount }, Read);
        }
        catch (AggregateException error) when (intake.Cancellation.IsCancellationRequested)
        {
            throw new OperationCanceledException("The reading was stopped.", error, intake.Cancellation);
        }

        foreach (var file in files)
        {
            intake.Absorb(file.Intake);
            if (!file.HasTable) continue;
            if (!days.TryGetValue(file.Date, out var day)) days.Add(file.Date, day = new CandidateDay(file.Date));
            day.Candidates.AddRange(file.Candidates);
        }
    }

    private void Find(FolderEntry entry)
    {
        var name = entry.IsFolder ? entry.Name : Path.GetFileNameWithoutExtension(entry.Name);
        if (name.Length is 10 && DateText.Read(name) is { } date)
        {
            if (!entry.IsFolder) Add(entry, date);
            else foreach (var inner in List(entry.Path)) AddOfDay(inner, date);
        }
        else if (entry.IsFolder && name.EndsWith(ClipShelf.FolderName, StringComparison.OrdinalIgnoreCase))
        {
            Add(entry, default).HoldBack(new InputFault("clips must lie in the folder of their day, so nothing in it was read.", $"Move it to {FolderName}/2026-03-02/{ClipShelf.FolderName} (with the date of the day), also where the results of the day are a workbook."));
        }
        else if (entry.IsFolder || IsSheetFile(Path.GetExtension(entry.Name)))
        {
            Add(entry, default).HoldBack(new InputFault("the name is not a date, so nothing in it was read.", "Name testing days year-month-day: 2026-03-02."));
        }
        else
        {
            Add(entry, default).Note("This file is not part of a season and was not read.");
        }
    }

    private void AddOfDay(FolderEntry entry, DateOnly date)
    {
        if (entry.IsFolder && string.Equals(entry.Name, ClipShelf.FolderName, StringComparison.OrdinalIgnoreCase)) Clips[date] = new ClipShelf(entry.Path, List(entry.Path));
        else Add(entry, date);
    }

    private TestingFile Add(FolderEntry entry, DateOnly date)
    {
        var file = new TestingFile(entry, date, intake.Part());
        files.Add(file);
        return file;
    }

    private void Read(TestingFile file)
    {
        if (file.IsDone) return;
        var ending = Path.GetExtension(file.Entry.Name).ToLowerInvariant();
        var name = Path.GetFileNameWithoutExtension(file.Entry.Name);
        if (file.Entry.IsFolder && !IsTableName(name))
        {
            file.Note("This folder is not read.");
        }
        else if (ending is ".xlsx")
        {
            foreach (var sheet in file.Intake.Open(file.Entry.Path).Cast<SheetTable>()) Read(file, sheet, sheet.Name);
        }
        else if (IsTableName(name) && TextEndings.Contains(ending))
        {
            foreach (var table in file.Intake.Open(file.Entry.Path)) Read(file, table, name);
        }
        else if (IsTableName(name) || IsSheetFile(ending))
        {
            file.HoldBack(new InputFault($"files of this kind ({CellText.Show(ending)}) are not read, or the name is none of {TableNames}.", "Save it as CSV or .xlsx under one of these names."));
        }
        else
        {
            file.Note($"This file was not read; a testing day has {TableNames}.");
        }
    }

    private void Read(TestingFile file, Table table, string name)
    {
        var kind = TrialTable.All.FirstOrDefault(t => t.Name == Words.Normal(name));
        if (kind is null)
        {
            file.Intake.Note(table.Path, $"This sheet was not read; a testing day has {TableNames}.");
            return;
        }

        file.HasTable = true;
        if (file.Date >= settings.From && file.Date <= settings.To)
        {
            ReadTrials(file, table, kind);
            return;
        }

        var fault = new InputFault($"the day {DateText.Iso(file.Date)} is outside the season, {DateText.Iso(settings.From)} to {DateText.Iso(settings.To)}.", "Correct the name of the day, or \"from\" and \"to\" in season.json.");
        file.Intake.HoldBackAll(table, file.Intake.Count(table.Path, table.Sha256), fault, 0);
    }

    private void ReadTrials(TestingFile file, Table table, TrialTable kind)
    {
        var numbers = new AttemptNumbers();
        ReadTable? context = null;
        IReadOnlyList<Column> columns = [.. kind.Columns, TrialTable.Checked, .. kind.HasTester ? [TrialTable.Tester] : Array.Empty<Column>()];
        file.Intake.ReadRows(table, columns, kind.HasGates, (row, tally) =>
        {
            context ??= new ReadTable(tally, row.Head);
            var athlete = squad.Of(row, TrialTable.AthleteId);
            var place = new TrialPlace(athlete?.Id ?? "", file.Date, new TrialSource(table.Path, row.Line), settings, numbers, squad);
            var isChecked = row.Word(TrialTable.Checked, Words.YesNo) ?? false;
            if (kind.Read(row, place) is not { } trial || row.Faults.Count > 0) return;
            if (row.ShortText(TrialTable.Tester, "tester", TrialTable.LongestTester) is { } tester) trial = trial with { Tester = tester };
            file.Candidates.Add(new Candidate(trial, context, isChecked));
        });
    }

    private IReadOnlyList<FolderEntry> List(string folder)
    {
        try
        {
            intake.Folder.RefuseLinkOut(folder);
            return intake.Folder.Entries(folder);
        }
        catch (InputFault fault)
        {
            Add(new FolderEntry(folder, Path.GetFileName(folder), true), default).HoldBack(fault);
            return [];
        }
    }

    private static string TableNames { get; } = string.Join(", ", TrialTable.All.Select(t => t.Name));

    private static bool IsTableName(string name) => TrialTable.All.Any(t => t.Name == Words.Normal(name));

    private static bool IsSheetFile(string ending) => ending.ToLowerInvariant() is ".csv" or ".tsv" or ".xlsx" or ".xls" or ".xlsm" or ".ods" or ".numbers";
}
