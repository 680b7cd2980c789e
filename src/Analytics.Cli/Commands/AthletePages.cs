using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using Analytics.Runner;
using Analytics.Runner.Batches;
using Analytics.Runner.Running;
using Analytics.Runner.Settings;
using Analytics.Season;

namespace Analytics.Cli.Commands;

/// <summary>For whom a notebook about one athlete makes pages: those of the season who have results.</summary>
/// <param name="Items">Athletes with results, each once.</param>
/// <param name="WithoutResults">Those without.</param>
/// <param name="InputsSha256">Digest of the files the season was read from.</param>
internal sealed record AthletePages(IReadOnlyList<BatchItem> Items, IReadOnlyList<BatchItem> WithoutResults, string InputsSha256)
{
    /// <summary>Name of the setting that takes an athlete.</summary>
    public const string Setting = "athlete";

    /// <summary>Opens the season as the notebook's own cells would.</summary>
    public static AthletePages Open(RunRequest request)
    {
        var settings = NotebookSettings.Read(request.Notebook, request.Settings);
        if (Text("season") is not { } season)
            throw new NotebookException(Fault.Usage, $"'{Path.GetFileName(request.Notebook)}' has no string setting 'season', so it is not known whose pages to make.");
        var folder = Path.GetDirectoryName(Path.GetFullPath(request.Notebook))!;
        var data = SeasonShelf.Open(
            Path.GetFullPath(season, folder),
            string.Join(';', (Text("earlier") ?? "").Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(e => Path.GetFullPath(e, folder))),
            Text("share") ?? "names");
        return From(data, DateOnly.TryParseExact(Text("day"), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : DateOnly.MaxValue);

        string? Text(string name) => settings.FirstOrDefault(s => s.Name == name) is { } setting ? NotebookSettings.Text(setting) : null;
    }

    /// <summary>Sorts the athletes of a season.</summary>
    /// <param name="data">The season.</param>
    /// <param name="until">The last testing day that counts.</param>
    public static AthletePages From(SeasonData data, DateOnly until)
    {
        var tested = data.Days.Where(d => d.Date <= until).SelectMany(d => d.Athletes).Where(a => a.Trials.Count > 0).Select(a => a.AthleteId).ToHashSet(StringComparer.Ordinal);
        var items = data.Athletes.Where(a => a.InLatestSeason).ToLookup(a => tested.Contains(a.Id), a => new BatchItem(a.Id, a.Name.Length == 0 || a.Name == a.Id ? a.Id : $"{a.Id} {a.Name}"));
        var files = data.Files.Select(f => (string[])[f.Path, f.Sha256]).OrderBy(f => f[0], StringComparer.Ordinal);
        return new AthletePages([.. items[true]], [.. items[false]], Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(files))));
    }
}
