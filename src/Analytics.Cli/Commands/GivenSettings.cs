using System.Globalization;
using Analytics.Runner;
using Analytics.Season;

namespace Analytics.Cli.Commands;

/// <summary>Turns the options of <c>run</c> into settings of a notebook.</summary>
internal static class GivenSettings
{
    public static IReadOnlyList<KeyValuePair<string, string>> From(string notebook, RunOptions options)
    {
        var given = new List<KeyValuePair<string, string>>();
        if (options.Season is not null)
            given.Add(new("season", SeasonSeenFrom(notebook, options.Season)));
        if (options.Earlier.Count > 0)
            given.Add(new("earlier", string.Join(';', options.Earlier.Select(e => EarlierSeenFrom(notebook, e)))));
        if (options.Share is not null)
            given.Add(new("share", Share(options.Share)));
        if (options.Day is not null)
            given.Add(new("day", Day(options.Day)));
        given.AddRange(options.Set.Select(Pair));
        return given;
    }

    // A notebook runs in its own folder, so that it finds the same files in any program; the path was typed in another.
    private static string SeasonSeenFrom(string notebook, string season)
    {
        if (!Directory.Exists(season) && !File.Exists(season))
            throw new NotebookException(Fault.Usage, $"There is no season folder '{season}'. Make one with: analytics new-season {season}");
        var from = Path.GetDirectoryName(Path.GetFullPath(notebook))!;
        var path = Path.GetRelativePath(from, Path.GetFullPath(season)).Replace('\\', '/');
        return path.StartsWith('.') || Path.IsPathRooted(path) ? path : "./" + path;
    }

    private static string EarlierSeenFrom(string notebook, string season)
    {
        if (season.Contains(';', StringComparison.Ordinal))
            throw new NotebookException(Fault.Usage, $"--earlier names one folder, not '{season}'. Give it once for each, oldest first; a folder with a semicolon in its name must be renamed.");
        if (!Directory.Exists(season) && !File.Exists(season))
            throw new NotebookException(Fault.Usage, $"There is no season folder '{season}' to join. Check the spelling.");
        var seen = SeasonSeenFrom(notebook, season);
        return !seen.Contains(';', StringComparison.Ordinal) ? seen
            : throw new NotebookException(Fault.Usage, $"The way to the season folder '{season}' leads through a folder with a semicolon in its name, but semicolons stand between seasons. Rename that folder, or copy the season elsewhere.");
    }

    private static string Share(string word)
        => SeasonShelf.ShareWords.FirstOrDefault(w => string.Equals(w, word, StringComparison.OrdinalIgnoreCase))
            ?? throw new NotebookException(Fault.Usage, $"--share is one of {string.Join(", ", SeasonShelf.ShareWords)}, not '{word}'.");

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
