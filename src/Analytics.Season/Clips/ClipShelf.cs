using Analytics.Season.Cells;
using Analytics.Season.Files;
using Analytics.Season.Intake;

namespace Analytics.Season.Clips;

/// <summary>The clip files of one testing day, by name of the clip.</summary>
internal sealed class ClipShelf(string path, IReadOnlyList<FolderEntry> entries)
{
    /// <summary>Folder of the clip files inside a day.</summary>
    public const string FolderName = "clips";

    private const string StampsEnding = ".times";
    private static readonly string[] TextEndings = [".csv", ".tsv", ".txt"];
    private readonly HashSet<string> used = new(StringComparer.Ordinal);

    /// <summary>Whether a clip has a file of points.</summary>
    public bool Has(string clip) => entries.Any(e => Is(e, clip));

    /// <summary>The file of points of a clip; null when there is none.</summary>
    public FolderEntry? Points(string clip) => Find(clip);

    /// <summary>The file of time stamps of a clip; null when there is none.</summary>
    public FolderEntry? Stamps(string clip) => Find(clip + StampsEnding);

    /// <summary>Remarks on what no row named, and on what is no clip file.</summary>
    public void NoteUnused(SeasonIntake intake)
    {
        var rest = entries.Where(e => !used.Contains(e.Path)).ToList();
        foreach (var entry in rest.Where(IsTable))
            intake.Note(entry.Path, $"No kept row of contact names the clip '{CellText.Show(ClipOf(entry))}', so the file was not read.");
        var others = rest.Where(e => !IsTable(e)).Select(e => CellText.Show(e.Name)).ToList();
        if (others.Count > 0)
            intake.Note(path, $"Not read, because only .csv files of points and time stamps are: {string.Join(", ", others.Take(5))}{(others.Count > 5 ? $" and {others.Count - 5} more" : "")}.");
    }

    private FolderEntry? Find(string name)
    {
        var found = entries.FirstOrDefault(e => Is(e, name));
        if (found is not null) used.Add(found.Path);
        return found;
    }

    private static bool Is(FolderEntry entry, string name) => IsTable(entry) && string.Equals(Path.GetFileNameWithoutExtension(entry.Name), name, StringComparison.OrdinalIgnoreCase);

    private static string ClipOf(FolderEntry entry)
    {
        var name = Path.GetFileNameWithoutExtension(entry.Name);
        return name.EndsWith(StampsEnding, StringComparison.OrdinalIgnoreCase) ? name[..^StampsEnding.Length] : name;
    }

    private static bool IsTable(FolderEntry entry) => !entry.IsFolder && TextEndings.Contains(Path.GetExtension(entry.Name).ToLowerInvariant());
}
