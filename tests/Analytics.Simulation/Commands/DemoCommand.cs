using System.Globalization;
using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Truth;

namespace Analytics.Simulation.Commands;

/// <summary><c>demo --out DIR [--seed N]</c>: writes a season and its truth.</summary>
public static class DemoCommand
{
    public const string Usage = "demo --out DIR [--seed N]      write the demo season and its truth";

    public static int Run(Arguments arguments, TextWriter output)
    {
        var folder = arguments.Required("--out");
        var seed = arguments.Number("--seed", (long)DemoSeason.DemoSeed);
        if (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any() && !File.Exists(Path.Combine(folder, TruthFiles.Folder, "truth.json")))
            throw new ArgumentException($"--out {folder}: the folder holds other files and no generated season; name a new or an empty one.");

        var season = DemoSeason.Generate((ulong)seed);
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
        foreach (var (path, bytes) in season.Files.Concat(TruthFiles.Write(season.Truth)))
        {
            var target = Path.Combine(folder, path);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.WriteAllBytes(target, bytes);
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{folder}: {season.Truth.Players.Count} athletes, {SeasonCalendar.TestingDays.Count} testing days, {season.Files.Count} files, {season.Truth.Errors.Count} typing errors, seed {seed}"));
        return 0;
    }
}
