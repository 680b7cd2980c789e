using System.Text.RegularExpressions;
using Analytics.Season.Cells;
using Analytics.Season.Clips;
using Analytics.Season.Intake;
using Analytics.Season.Training;
using Analytics.Season.Trials;

namespace Analytics.Season.Sharing;

/// <summary>
/// Paths of a shared season. The names the kit itself gives files stay; clips, which are often called after players, get numbers, and so does every other name.
/// </summary>
internal sealed partial class SharedPaths(IReadOnlyDictionary<string, string> seasons)
{
    private static readonly HashSet<string> Known = new(["season.json", TestingReader.FolderName, ClipShelf.FolderName, .. TrialTable.All.Select(t => t.Name), "athletes", "availability", "sessions", TrainingFolder.Name, .. TrainingFolder.Files.Select(Words.Normal)], StringComparer.Ordinal);
    private readonly Dictionary<(string Day, string Clip), string> clips = [];
    private readonly Dictionary<string, int> clipsOfDay = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> others = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> shown = new(StringComparer.Ordinal);

    /// <summary>The clip of a day as it may be called. Numbers are given in the order they are asked for.</summary>
    public string Clip(DateOnly date, string clip) => Clip(DateText.Iso(date), clip);

    /// <summary>The path as it may be shown.</summary>
    public string Path(string path)
    {
        if (shown.TryGetValue(path, out var known)) return known;
        var sheet = path.Split('#', 2);
        var parts = sheet[0].Split('/');
        var first = seasons.ContainsKey(parts[0]) ? 1 : 0;
        var safe = parts.Select((p, i) => i < first ? seasons[p] : i > first + 2 && Words.Normal(parts[i - 1]) == ClipShelf.FolderName ? ClipFile(parts[i - 2], p) : Part(p));
        return shown[path] = string.Join('/', safe) + (sheet.Length > 1 ? $"#{Part(sheet[1])}" : "");
    }

    private string Clip(string day, string clip)
    {
        var key = (day, clip.ToUpperInvariant());
        if (clips.TryGetValue(key, out var name)) return name;
        var number = clipsOfDay[day] = clipsOfDay.GetValueOrDefault(day) + 1;
        return clips[key] = FormattableString.Invariant($"clip-{number}");
    }

    private string ClipFile(string day, string name)
    {
        var ending = ClipEnding().Match(name);
        return ending.Success ? Clip(day, name[..ending.Index]) + ending.Value.ToLowerInvariant() : Part(name);
    }

    private string Part(string part)
    {
        var ending = FileEnding().Match(part).Value;
        var name = part[..^ending.Length];
        if (part.Length is 0 || Known.Contains(Words.Normal(part)) || Known.Contains(Words.Normal(name)) || Date().IsMatch(name)) return part;
        if (!others.TryGetValue(part, out var other)) others.Add(part, other = FormattableString.Invariant($"other-{others.Count + 1}{ending.ToLowerInvariant()}"));
        return other;
    }

    [GeneratedRegex(@"\.(csv|tsv|txt|xlsx?|xlsm|ods|json)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex FileEnding();

    [GeneratedRegex(@"(\.times)?\.(csv|tsv|txt)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex ClipEnding();

    [GeneratedRegex(@"^\d{4}-\d\d-\d\d$")]
    private static partial Regex Date();
}
