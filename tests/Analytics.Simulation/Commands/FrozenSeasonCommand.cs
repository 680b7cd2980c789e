using System.Globalization;
using Analytics.Simulation.Frozen;

namespace Analytics.Simulation.Commands;

/// <summary><c>frozen-season --from DIR --out DIR</c>: cuts the small season that regression rows of metrics stand on.</summary>
public static class FrozenSeasonCommand
{
    public const string Usage = "frozen-season --from DIR --out DIR      cut the small season that regression rows of metrics stand on";

    /// <summary>The season's own folder, so that what describes it is no part of it.</summary>
    public const string Season = "season";

    public static int Run(Arguments arguments, TextWriter output)
    {
        string from = arguments.Required("--from"), to = arguments.Required("--out");
        if (!File.Exists(Path.Combine(from, "season.json")))
            throw new ArgumentException($"--from {from}: there is no season.json in it; name the folder of the demo season.");
        var season = Path.Combine(to, Season);
        if (Directory.Exists(season))
            throw new ArgumentException($"{season} is there already. It is frozen: every regression row of a metric stands on it. Delete it first if it really has to change.");
        var files = SeasonCut.Frozen.Of(from);
        foreach (var (path, bytes) in files)
        {
            var target = Path.Combine(season, path);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.WriteAllBytes(target, bytes);
        }

        File.WriteAllText(Path.Combine(to, SeasonCut.DigestFile), SeasonCut.Digests(files.ToDictionary(f => $"{Season}/{f.Key}", f => f.Value)));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{season}: {SeasonCut.Frozen.Athletes.Count} athletes, {files.Count} files, {files.Values.Sum(b => b.Length)} bytes"));
        return 0;
    }
}
