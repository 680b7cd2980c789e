using System.Globalization;
using Analytics.Runner;

namespace Analytics.Cli.Commands;

/// <summary>Turns the options of <c>run</c> into settings of a notebook.</summary>
internal static class GivenSettings
{
    public static IReadOnlyList<KeyValuePair<string, string>> From(string notebook, string? season, string? day, IReadOnlyList<string> set)
    {
        var given = new List<KeyValuePair<string, string>>();
        if (season is not null)
            given.Add(new("season", SeasonSeenFrom(notebook, season)));
        if (day is not null)
            given.Add(new("day", Day(day)));
        given.AddRange(set.Select(Pair));
        return given;
    }

    // A notebook runs in its own folder, so that it finds the same files in any program; the path was typed in another.
    internal static string SeasonSeenFrom(string notebook, string season)
    {
        if (!Directory.Exists(season) && !File.Exists(season))
            throw new NotebookException(Fault.Usage, $"There is no season folder '{season}'. Make one with: analytics new-season {season}");
        var from = Path.GetDirectoryName(Path.GetFullPath(notebook))!;
        var path = Path.GetRelativePath(from, Path.GetFullPath(season)).Replace('\\', '/');
        return path.StartsWith('.') || Path.IsPathRooted(path) ? path : "./" + path;
    }

    private static string Day(string day)
        => DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _)
            ? day
            : throw new NotebookException(Fault.Usage, $"--day is a date such as 2026-06-08, not '{day}'.");

    private static KeyValuePair<string, string> Pair(string text)
    {
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        return equals > 0
            ? new(text[..equals].Trim(), text[(equals + 1)..])
            : throw new NotebookException(Fault.Usage, $"--set takes name=value, not '{text}'.");
    }
}
