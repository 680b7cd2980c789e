using System.Diagnostics;
using System.Globalization;

namespace Analytics.Benchmarks.NotebookRuns;

/// <summary>Cold starts of the built program and of its ahead-of-time publish, in turn with Jupyter on the same notebook.</summary>
internal sealed class NotebookRunBenchmark : IBenchmark
{
    private const string Notebook = "notebooks/testing-day.ipynb";

    public string Name => "notebook-run";

    public string What => "cold runs of the testing-day notebook beside jupyter-nbconvert --execute [ROUNDS]";

    public int Run(string[] args)
    {
        var rounds = args.Length > 0 && int.TryParse(args[0], CultureInfo.InvariantCulture, out var given) && given > 0 ? given : 5;
        var root = Root();
        var place = Directory.CreateTempSubdirectory("notebook-run-").FullName;
        var published = Path.Combine(place, "publish");
        if (Time(root, "dotnet", ["build", "src/Analytics.Cli", "-c", "Release", "-v", "quiet", "-nologo"]) is null
            || Time(root, "dotnet", ["publish", "src/Analytics.Cli", "-c", "Release", "-r", "linux-x64", "-p:PublishReadyToRun=true", "--self-contained", "false", "-o", published, "-v", "quiet", "-nologo"]) is null)
            return 2;
        var built = Path.Combine(root, "src", "Analytics.Cli", "bin", "Release", "net10.0", "analytics.dll");
        (string Name, string Program, string[] Arguments)[] ways =
        [
            ("jupyter-nbconvert --execute", "jupyter-nbconvert", ["--to", "notebook", "--execute", Notebook, "--output-dir", place, "--output", "jupyter.ipynb"]),
            ("built program", "dotnet", [built, "run", Notebook, "--out", place]),
            ("ahead-of-time publish", Path.Combine(published, "analytics"), ["run", Notebook, "--out", place]),
        ];

        var seconds = ways.ToDictionary(w => w.Name, _ => new List<double>());
        // The first round warms the disk and is not counted.
        for (var round = 0; round <= rounds; round++)
        {
            foreach (var (name, program, arguments) in ways)
            {
                if (Time(root, program, arguments) is not { } took) return 2;
                if (round > 0) seconds[name].Add(took);
            }
        }

        var jupyter = seconds[ways[0].Name];
        foreach (var (name, _, _) in ways)
        {
            var own = seconds[name];
            var ratio = Median(own.Zip(jupyter, (a, b) => a / b));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{name,-28} median {Median(own):0.00} s ({own.Min():0.00} to {own.Max():0.00}), ratio to Jupyter, round by round, median {ratio:0.00}"));
        }

        Directory.Delete(place, recursive: true);
        return 0;
    }

    internal static double? Time(string root, string program, string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = root, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["PATH"] = Environment.GetEnvironmentVariable("PATH") + Path.PathSeparator
            + Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".dotnet", "tools");
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode == 0) return clock.Elapsed.TotalSeconds;
        Console.Error.WriteLine($"{program} ended with code {process.ExitCode}.\n{output.GetAwaiter().GetResult()}\n{error}");
        return null;
    }

    internal static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted.Length % 2 == 1 ? sorted[sorted.Length / 2] : (sorted[sorted.Length / 2 - 1] + sorted[sorted.Length / 2]) / 2;
    }

    internal static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Analytics.sln"))) return folder.FullName;
        throw new InvalidOperationException("The benchmark has to run inside the working copy.");
    }
}
