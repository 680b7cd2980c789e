using System.Globalization;
using Analytics.Benchmarks.NotebookRuns;

namespace Analytics.Benchmarks.SeasonHistory;

/// <summary>Cold runs of the season report beside those of the testing day, in turn, on the same season (60 athletes).</summary>
internal sealed class SeasonReportBenchmark : IBenchmark
{
    public string Name => "season-report";

    public string What => "cold runs of the season-report notebook beside the testing-day notebook on the demo season [ROUNDS]";

    public int Run(string[] args)
    {
        var rounds = args.Length > 0 && int.TryParse(args[0], CultureInfo.InvariantCulture, out var given) && given > 0 ? given : 5;
        var root = NotebookRunBenchmark.Root();
        if (NotebookRunBenchmark.Time(root, "dotnet", ["build", "src/Analytics.Cli", "-c", "Release", "-v", "quiet", "-nologo"]) is null) return 2;
        var place = Directory.CreateTempSubdirectory("season-report-").FullName;
        var built = Path.Combine(root, "src", "Analytics.Cli", "bin", "Release", "net10.0", "analytics.dll");
        List<double> day = [], season = [];
        // The first round warms the disk and is not counted.
        for (var round = 0; round <= rounds; round++)
        {
            if (NotebookRunBenchmark.Time(root, "dotnet", [built, "run", "notebooks/testing-day.ipynb", "--out", place]) is not { } first
                || NotebookRunBenchmark.Time(root, "dotnet", [built, "run", "notebooks/season-report.ipynb", "--out", place]) is not { } second) return 2;
            if (round == 0) continue;
            day.Add(first);
            season.Add(second);
        }

        foreach (var (name, own) in new[] { ("testing-day", day), ("season-report", season) })
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{name,-16} median {NotebookRunBenchmark.Median(own):0.00} s ({own.Min():0.00} to {own.Max():0.00}), ratio to testing-day, round by round, median {NotebookRunBenchmark.Median(own.Zip(day, (a, b) => a / b)):0.00}"));
        Directory.Delete(place, recursive: true);
        return 0;
    }
}
