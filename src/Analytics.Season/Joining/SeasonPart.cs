using Analytics.Metrics.Trials;
using Analytics.Season.Intake;

namespace Analytics.Season.Joining;

/// <summary>One of the seasons that are joined.</summary>
/// <param name="Name">Its name, unique among the joined; stands before the paths of its files, so that they are told apart and say nothing of the disk.</param>
/// <param name="Data">The season.</param>
/// <param name="IsLatest">Whether it is the season itself; its paths stay plain.</param>
internal sealed record SeasonPart(string Name, SeasonData Data, bool IsLatest)
{
    private readonly Dictionary<string, string> paths = new(StringComparer.Ordinal);

    /// <summary>A path as the joined season shows it.</summary>
    public string Path(string path)
    {
        if (IsLatest) return path;
        if (!paths.TryGetValue(path, out var shown)) paths.Add(path, shown = path.Length is 0 ? Name : $"{Name}/{path}");
        return shown;
    }

    /// <summary>The same trial of a joined season.</summary>
    public Trial Trial(Trial trial, Func<string, string> idOf)
    {
        trial = TrialPeople.With(trial, idOf);
        return IsLatest || trial.Source is not { } at ? trial : trial with { Source = at with { File = Path(at.File) } };
    }

    /// <summary>The seasons with names that tell them apart.</summary>
    /// <param name="seasons">Oldest first.</param>
    public static IReadOnlyList<SeasonPart> Of(IReadOnlyList<SeasonData> seasons)
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var latest = seasons[^1];
        // A name must not look like a folder of the latest season.
        foreach (var path in latest.Files.Select(f => f.Path).Concat(latest.Notes.Select(n => n.File))) taken.Add(path.Split('/')[0]);
        return [.. seasons.Select((s, i) => i == seasons.Count - 1 ? new SeasonPart(s.Settings.Season, s, true) : new SeasonPart(Unique(s.Settings.Season, taken), s, false))];
    }

    private static string Unique(string season, HashSet<string> taken)
    {
        var plain = string.Concat(season.Select(c => char.IsControl(c) ? ' ' : c is '/' or '\\' or '#' ? '-' : c)).Trim();
        var name = plain;
        for (var number = 2; !taken.Add(name); number++) name = FormattableString.Invariant($"{plain} ({number})");
        return name;
    }
}
