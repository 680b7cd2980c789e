using System.Security.Cryptography;
using System.Text;

namespace Analytics.Simulation.Frozen;

/// <summary>
/// The part of a season that is about some athletes: rows as they were typed, the others left out. Training sessions, plans of training and the truth are left out altogether;
/// of the contact drill only some clips are kept.
/// </summary>
public sealed record SeasonCut(IReadOnlySet<string> Athletes, IReadOnlySet<string> Clips)
{
    /// <summary>List of digests beside the cut, as the program sha256sum writes and checks it.</summary>
    public const string DigestFile = "digests.txt";

    /// <summary>
    /// Twelve athletes of all eight position groups, none with a slip of typing; the two of TC01's repetition are both among them. One clip is timed by its rate, one
    /// by time stamps.
    /// </summary>
    public static SeasonCut Frozen { get; } = new(
        new HashSet<string> { "TC01", "TC02", "TC11", "TC12", "TC16", "TC26", "TC31", "TC36", "TC40", "TC46", "TC51", "TC58" },
        new HashSet<string> { "tc01-1", "tc11-1" });

    /// <summary>The files of the cut by path, forward slashes.</summary>
    public SortedDictionary<string, byte[]> Of(string season)
    {
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var file in Directory.EnumerateFiles(season, "*", SearchOption.AllDirectories))
        {
            var path = Path.GetRelativePath(season, file).Replace('\\', '/');
            if (path.StartsWith("truth/", StringComparison.Ordinal) || path == "sessions.csv" || path.StartsWith("training/", StringComparison.Ordinal)) continue;
            if (Cut(path, File.ReadAllBytes(file)) is { } bytes) files.Add(path, bytes);
        }

        return files;
    }

    /// <summary>The list of digests, one line a file.</summary>
    public static string Digests(IReadOnlyDictionary<string, byte[]> files)
        => string.Concat(files.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => $"{Convert.ToHexStringLower(SHA256.HashData(f.Value))}  {f.Key}\n"));

    private byte[]? Cut(string path, byte[] bytes)
    {
        if (path.Contains("/clips/", StringComparison.Ordinal)) return Clips.Contains(Path.GetFileName(path).Split('.')[0]) ? bytes : null;
        if (path.EndsWith(".xlsx", StringComparison.Ordinal)) return WorkbookCut.Rows(bytes, Athletes);
        return path.EndsWith(".csv", StringComparison.Ordinal) ? Rows(bytes) : bytes;
    }

    // Lines are taken as they are, so that what a spreadsheet made of them stays: the mark at the start, commas for points, line ends.
    private byte[] Rows(byte[] bytes)
    {
        var lines = Encoding.UTF8.GetString(bytes).Split('\n');
        var separator = lines[0].Contains(';', StringComparison.Ordinal) ? ';' : ',';
        var heads = lines[0].Trim('\uFEFF', '\r').Split(separator);
        int athlete = Array.IndexOf(heads, "athlete_id"), clip = Array.IndexOf(heads, "clip");
        var kept = lines.Skip(1).Where(l => l.Length > 0).Where(line =>
        {
            var cells = line.TrimEnd('\r').Split(separator);
            return Athletes.Contains(cells[athlete]) && (clip < 0 || Clips.Contains(cells[clip]));
        });
        return Encoding.UTF8.GetBytes(string.Join('\n', kept.Prepend(lines[0]).Append("")));
    }
}
