using Analytics.Season.Cells;
using Analytics.Season.Files;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>What lies in the folder <c>training</c> of a season.</summary>
internal sealed class TrainingFolder
{
    /// <summary>Name of the folder.</summary>
    public const string Name = "training";

    /// <summary>Names of its files without ending, in the order they are read: each may name what stands in those before it.</summary>
    public static readonly IReadOnlyList<string> Files = ["exercises", "schemes", "day-kinds", "week-shapes", "rules", "rooms", "weights", "calendar", "restrictions", "targets", "plan"];

    private readonly SeasonIntake intake;
    private readonly Dictionary<string, List<FolderEntry>> byName = new(StringComparer.OrdinalIgnoreCase);

    private TrainingFolder(SeasonIntake intake) => this.intake = intake;

    /// <summary>Lists the folder; what is no part of it is remarked, a table that is not read is held back.</summary>
    /// <param name="intake">The reading.</param>
    /// <param name="folders">Entries of the season that bear the name.</param>
    public static TrainingFolder Open(SeasonIntake intake, IReadOnlyList<FolderEntry> folders)
    {
        var folder = new TrainingFolder(intake);
        foreach (var entry in folders)
        {
            if (!entry.IsFolder) intake.Note(entry.Path, $"This is a file; '{Name}' is a folder of a season. It was not read.");
            else foreach (var inner in folder.List(entry.Path)) folder.Find(inner);
        }

        return folder;
    }

    /// <summary>The tables of a file; none when there is no such file, or it cannot be opened.</summary>
    public IReadOnlyList<Table> Tables(string name) => [.. byName.GetValueOrDefault(name, []).SelectMany(e => intake.Open(e.Path))];

    /// <summary>Path of a file as it lies there; as it would be called when it does not.</summary>
    public string PathOf(string name) => byName.TryGetValue(name, out var found) ? found[0].Path : $"{Name}/{name}.csv";

    /// <summary>Whether there is a file of this name.</summary>
    public bool Has(string name) => byName.ContainsKey(name);

    private void Find(FolderEntry entry)
    {
        var (name, ending) = (Path.GetFileNameWithoutExtension(entry.Name), Path.GetExtension(entry.Name).ToLowerInvariant());
        var known = Files.FirstOrDefault(f => string.Equals(f, name, StringComparison.OrdinalIgnoreCase));
        if (known is not null && !entry.IsFolder && ending is ".csv" or ".tsv")
        {
            if (!byName.TryGetValue(known, out var list)) byName.Add(known, list = []);
            list.Add(entry);
        }
        else if (!entry.IsFolder && ending is ".csv" or ".tsv" or ".xlsx" or ".xls" or ".xlsm" or ".ods" or ".numbers")
        {
            var near = known is null ? NearWord.Of(name, Files) : null;
            intake.Count(entry.Path).HoldBack(known is null
                ? new InputFault($"the name is none of {string.Join(", ", Files)}, so nothing in it was read.", near is null ? "Name it as one of them, or take it out of the folder." : $"Did you mean {near}.csv? Name it so.")
                : new InputFault($"files of this kind ({ending}) are not read here.", $"Save it as {known}.csv."), 0);
        }
        else
        {
            intake.Note(entry.Path, $"This {(entry.IsFolder ? "folder" : "file")} is not part of '{Name}' and was not read.");
        }
    }

    private IReadOnlyList<FolderEntry> List(string path)
    {
        try
        {
            intake.Folder.RefuseLinkOut(path);
            return intake.Folder.Entries(path);
        }
        catch (InputFault fault)
        {
            intake.Count(path).HoldBack(fault, 0);
            return [];
        }
    }
}
