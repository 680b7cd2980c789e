using Analytics.Metrics.Trials;
using Analytics.Season.Cells;
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

    /// <summary>The days, by date.</summary>
    public IReadOnlyCollection<CandidateDay> Days => days.Values;

    /// <summary>Reads everything in the testing folder.</summary>
    /// <param name="folder">Path of the folder inside the season.</param>
    public void ReadAll(string folder)
    {
        foreach (var entry in List(folder))
        {
            var name = entry.IsFolder ? entry.Name : Path.GetFileNameWithoutExtension(entry.Name);
            var ending = Path.GetExtension(entry.Name);
            if (DateText.Read(name) is { } date && name.Length is 10) ReadDay(entry, date);
            else if (entry.IsFolder || IsSheetFile(ending))
                intake.Count(entry.Path).HoldBack(new InputFault("the name is not a date, so nothing in it was read.", "Name testing days year-month-day: 2026-03-02."), 0);
            else intake.Note(entry.Path, "This file is not part of a season and was not read.");
        }
    }

    private void ReadDay(FolderEntry entry, DateOnly date)
    {
        if (!entry.IsFolder)
        {
            ReadFile(entry, date);
            return;
        }

        foreach (var inner in List(entry.Path))
        {
            if (inner.IsFolder && !IsTableName(Path.GetFileNameWithoutExtension(inner.Name))) intake.Note(inner.Path, "This folder is not read.");
            else ReadFile(inner, date);
        }
    }

    private void ReadFile(FolderEntry file, DateOnly date)
    {
        var ending = Path.GetExtension(file.Name).ToLowerInvariant();
        var name = Path.GetFileNameWithoutExtension(file.Name);
        if (ending is ".xlsx")
        {
            foreach (var sheet in intake.Open(file.Path).Cast<SheetTable>()) ReadTable(sheet, sheet.Name, date);
        }
        else if (IsTableName(name) && TextEndings.Contains(ending))
        {
            foreach (var table in intake.Open(file.Path)) ReadTable(table, name, date);
        }
        else if (IsTableName(name) || IsSheetFile(ending))
        {
            intake.Count(file.Path).HoldBack(new InputFault($"files of this kind ({ending}) are not read, or the name is none of {TableNames}.", "Save it as CSV or .xlsx under one of these names."), 0);
        }
        else
        {
            intake.Note(file.Path, $"This file was not read; a testing day has {TableNames}.");
        }
    }

    private void ReadTable(Table table, string name, DateOnly date)
    {
        var kind = TrialTable.All.FirstOrDefault(t => t.Name == Words.Normal(name));
        if (kind is null)
        {
            intake.Note(table.Path, $"This sheet was not read; a testing day has {TableNames}.");
            return;
        }

        if (!days.TryGetValue(date, out var day)) days.Add(date, day = new CandidateDay(date));
        if (date < settings.From || date > settings.To)
        {
            var fault = new InputFault($"the day {DateText.Iso(date)} is outside the season, {DateText.Iso(settings.From)} to {DateText.Iso(settings.To)}.", "Correct the name of the day, or \"from\" and \"to\" in season.json.");
            intake.HoldBackAll(table, intake.Count(table.Path, table.Sha256), fault, 0);
            return;
        }

        ReadTrials(table, kind, day);
    }

    private void ReadTrials(Table table, TrialTable kind, CandidateDay day)
    {
        var numbers = new AttemptNumbers();
        ReadTable? context = null;
        intake.ReadRows(table, [.. kind.Columns, TrialTable.Checked], kind.HasGates, (row, tally) =>
        {
            context ??= new ReadTable(tally, row.Head);
            var athlete = squad.Of(row, TrialTable.AthleteId);
            var place = new TrialPlace(athlete?.Id ?? "", day.Date, new TrialSource(table.Path, row.Line), settings, numbers);
            var isChecked = row.Word(TrialTable.Checked, Words.YesNo) ?? false;
            if (kind.Read(row, place) is { } trial && row.Faults.Count is 0) day.Candidates.Add(new Candidate(trial, context, isChecked));
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
            intake.Count(folder).HoldBack(fault, 0);
            return [];
        }
    }

    private static string TableNames { get; } = string.Join(", ", TrialTable.All.Select(t => t.Name));

    private static bool IsTableName(string name) => TrialTable.All.Any(t => t.Name == Words.Normal(name));

    private static bool IsSheetFile(string ending) => ending.ToLowerInvariant() is ".csv" or ".tsv" or ".xlsx" or ".xls" or ".xlsm" or ".ods" or ".numbers";
}
