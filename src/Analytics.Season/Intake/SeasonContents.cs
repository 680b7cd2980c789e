using Analytics.Metrics.Catalogue;
using Analytics.Planning;
using Analytics.Season.Cells;
using Analytics.Season.Checks;
using Analytics.Season.Files;
using Analytics.Season.Settings;
using Analytics.Season.Sharing;
using Analytics.Season.Squad;
using Analytics.Season.Training;

namespace Analytics.Season.Intake;

/// <summary>What lies at the top of a season folder.</summary>
internal sealed class SeasonContents(SeasonIntake intake)
{
    private readonly IReadOnlyList<FolderEntry> entries = intake.Folder.Entries("");
    private readonly HashSet<string> used = new(StringComparer.Ordinal);

    /// <summary>Reads season.json.</summary>
    /// <exception cref="SeasonException">Missing or unusable.</exception>
    public SeasonSettings Settings()
    {
        var entry = Find(SettingsReader.FileName).FirstOrDefault()
            ?? throw new SeasonException($"There is no {SettingsReader.FileName} in the folder, so it is no season. Check the folder, or make a season with new-season.");
        try
        {
            var file = intake.Folder.Read(entry.Path);
            intake.Count(file.Path, file.Sha256);
            var settings = SettingsReader.Read(file, intake.Notes);
            NoteUnknown(file.Path, "worthwhile", settings.Worthwhile.Keys);
            NoteUnknown(file.Path, "test_minutes", settings.TestMinutes.Keys);
            return settings;
        }
        catch (InputFault fault)
        {
            throw new SeasonException($"{entry.Path} cannot be used: {fault.Reason} {fault.Remedy}", fault);
        }
    }

    private void NoteUnknown(string path, string key, IEnumerable<string> ids)
    {
        foreach (var id in ids.Where(k => MetricCatalogue.All.All(m => m.Id != k)))
            intake.Note(path, $"'{key}.{CellText.Show(id)}' is no known metric and has no effect{(NearWord.Of(id, MetricCatalogue.All.Select(m => m.Id)) is { } near ? $"; did you mean {near}?" : ".")}");
    }

    /// <summary>Reads the athlete list.</summary>
    /// <exception cref="SeasonException">Missing, or without a usable athlete.</exception>
    public SquadList Squad()
    {
        var squad = new SquadList();
        var files = Tables("athletes");
        if (files.Count is 0) throw new SeasonException("There is no athletes.csv in the season folder. Write one with the columns athlete_id, name, position, group.");
        var before = intake.Files.Count;
        foreach (var file in files)
            foreach (var table in intake.Open(file.Path)) AthletesReader.Read(intake, table, squad);
        if (squad.Count > 0) return squad;
        var fault = AthletesReader.Unusable(intake.Files.Skip(before));
        throw new SeasonException($"{files[0].Path} cannot be used: {fault.Reason} {fault.Remedy}", fault);
    }

    /// <summary>Reads spells of restricted availability, if there is a file of them.</summary>
    public void Availability(SquadList squad)
    {
        foreach (var file in Tables("availability"))
            foreach (var table in intake.Open(file.Path)) AvailabilityReader.Read(intake, table, squad);
    }

    /// <summary>Reads the training sessions, if there is a file of them.</summary>
    public List<TrainingSession> Sessions(SeasonSettings settings, SquadList squad, TestedStrength tested)
    {
        var sessions = new SessionList();
        foreach (var file in Tables("sessions"))
            foreach (var table in intake.Open(file.Path)) SessionsReader.Read(intake, table, squad, settings, tested, sessions);
        return sessions.Make();
    }

    /// <summary>Reads the testing days.</summary>
    public TestingReader Testing(SeasonSettings settings, SquadList squad)
    {
        var reader = new TestingReader(intake, settings, squad);
        var folders = Find(TestingReader.FolderName);
        foreach (var folder in folders) reader.ReadAll(folder.Path);
        if (folders.Count is 0) intake.Note("", $"There is no folder '{TestingReader.FolderName}', so there are no results.");
        foreach (var day in settings.Retests.SelectMany(r => new[] { r.First, r.Second }).Distinct().Order())
            if (reader.Days.All(d => d.Date != day)) intake.Note(SettingsReader.FileName, $"'retests' names {DateText.Iso(day)}, but there is no such testing day.");
        return reader;
    }

    /// <summary>Reads the folder of training; without one, what comes with the kit.</summary>
    public TrainingSettings Training(SeasonSettings settings, SquadList squad, IReadOnlySet<string> tested)
        => new TrainingReader(intake, settings, squad, tested).Read(TrainingFolder.Open(intake, Find(TrainingFolder.Name)));

    /// <summary>Remarks on everything nobody read.</summary>
    public void NoteTheRest()
    {
        Find(ShareKey.FileName);
        foreach (var entry in entries.Where(e => !used.Contains(e.Path)))
            intake.Note(entry.Path, entry.IsFolder ? "This folder is not part of a season and was not read." : "This file is not part of a season and was not read.");
    }

    private List<FolderEntry> Find(string name)
    {
        var found = entries.Where(e => string.Equals(e.Name, name, StringComparison.OrdinalIgnoreCase)).ToList();
        used.UnionWith(found.Select(e => e.Path));
        return found;
    }

    private List<FolderEntry> Tables(string name) => [.. Find(name + ".csv"), .. Find(name + ".tsv"), .. Find(name + ".xlsx")];
}
