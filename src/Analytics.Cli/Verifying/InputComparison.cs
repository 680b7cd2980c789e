using System.Security.Cryptography;
using Analytics.Runner.Proofs;

namespace Analytics.Cli.Verifying;

/// <summary>Which of the files behind a report are not what they were.</summary>
/// <param name="Changed">Files with other bytes.</param>
/// <param name="Missing">Files that are gone.</param>
/// <param name="New">Files that were not there.</param>
/// <param name="Count">How many files the report rests on.</param>
internal sealed record InputComparison(IReadOnlyList<string> Changed, IReadOnlyList<string> Missing, IReadOnlyList<string> New, int Count)
{
    public bool IsSame => Changed.Count + Missing.Count + New.Count == 0;

    /// <summary>All of them in words, sorted, for example <c>a.csv, b.csv (missing)</c>.</summary>
    public string InWords => string.Join(", ", [.. Changed, .. Missing.Select(m => m + " (missing)"), .. New.Select(n => n + " (new)")]);

    /// <summary>Compares by the digests of a report made again.</summary>
    public static InputComparison Of(Proof report, Proof again) => Of(Files(report), Files(again));

    /// <summary>Compares with the files of a folder, when the report could not be made again as far as its list of files.</summary>
    /// <param name="report">The proof of the report.</param>
    /// <param name="again">The proof of the one made again.</param>
    /// <param name="folder">The folder.</param>
    public static InputComparison Of(Proof report, Proof again, string folder)
    {
        var told = Files(report);
        var there = report.Inputs.Select(i => i.File.Split('#')[0]).Distinct().Where(f => IsInside(f) && File.Exists(Path.Combine(folder, f)))
            .ToDictionary(f => f, f => Digest(Path.Combine(folder, f)), StringComparer.Ordinal);
        foreach (var file in again.With) there[file.File] = file.Sha256;
        return Of(told, there);
    }

    private static InputComparison Of(Dictionary<string, string> told, Dictionary<string, string> now) => new(
        Sorted(told.Keys.Where(f => now.TryGetValue(f, out var digest) && digest != told[f])),
        Sorted(told.Keys.Where(f => !now.ContainsKey(f))),
        Sorted(now.Keys.Where(f => !told.ContainsKey(f))),
        told.Count);

    private static IReadOnlyList<string> Sorted(IEnumerable<string> files) => [.. files.Order(StringComparer.Ordinal)];

    // The sheets of a workbook are one file.
    private static Dictionary<string, string> Files(Proof proof)
        => proof.Inputs.Concat(proof.With).GroupBy(i => i.File.Split('#')[0], StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First().Sha256, StringComparer.Ordinal);

    // Names come from a file of unknown origin.
    private static bool IsInside(string file) => !Path.IsPathRooted(file) && !file.Split('/', '\\').Contains("..");

    private static string Digest(string path)
    {
        try
        {
            using var stream = File.OpenRead(path);
            return Convert.ToHexStringLower(SHA256.HashData(stream));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }
}
