using System.Diagnostics;
using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.WholeSeason;

namespace Analytics.Benchmarks.SeasonHistory;

/// <summary>Time and memory of the season report over ten joined seasons of weekly monitoring, at three sizes, each in a process of its own.</summary>
internal sealed class SeasonHistoryBenchmark : IBenchmark
{
    private const int Repeats = 3;
    private static readonly int[] Sizes = [3, 5, 10];

    public string Name => "season-history";

    public string What => "seconds and peak memory of the season report over up to 10 seasons of 120 athletes tested weekly (300,000 trials)";

    public int Run(string[] args)
    {
        if (args is ["report", var latest, var earlier]) return ReportOne(latest, earlier);
        var root = Path.Combine(Path.GetTempPath(), $"season-history-{Environment.ProcessId}");
        try
        {
            Console.Out.WriteLine($"best and worst of {Repeats} cold processes, {Environment.ProcessorCount} cores; reading, joining, checking and all blocks as HTML");
            Console.Out.WriteLine($"{"trials",10} {"best s",8} {"worst s",8} {"CPU s",8} {"peak MB",8}");
            var folders = WeeklySeasons.Write(root, Sizes[^1]);
            List<(int Trials, double Cpu)> measured = [];
            foreach (var size in Sizes)
            {
                var runs = Enumerable.Range(0, Repeats).Select(_ => Child(folders[size - 1], string.Join(';', folders.Take(size - 1)))).ToList();
                var trials = size * WeeklySeasons.Athletes * WeeklySeasons.Weeks * WeeklySeasons.TrialsPerAthleteAndWeek;
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{trials,10} {runs.Min(r => r.Seconds),8:0.00} {runs.Max(r => r.Seconds),8:0.00} {runs.Min(r => r.Cpu),8:0.00} {runs.Max(r => r.PeakMegabytes),8:0}"));
                measured.Add((trials, runs.Min(r => r.Cpu)));
            }

            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"CPU time per trial at {measured[^1].Trials} over that at {measured[0].Trials}: {measured[^1].Cpu / measured[^1].Trials / (measured[0].Cpu / measured[0].Trials):0.00} (1 is linear, less means a fixed start-up cost)"));
            return 0;
        }
        finally
        {
            if (Directory.Exists(root)) Directory.Delete(root, recursive: true);
        }
    }

    private static (double Seconds, double Cpu, double PeakMegabytes) Child(string latest, string earlier)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath) is "dotnet") start.ArgumentList.Add(typeof(SeasonHistoryBenchmark).Assembly.Location);
        foreach (var argument in (string[])["season-history", "report", latest, earlier]) start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        double[] fields = [.. process.StandardOutput.ReadToEnd().Split(' ').Select(f => double.Parse(f, CultureInfo.InvariantCulture))];
        process.WaitForExit();
        return (fields[0], fields[1], fields[2]);
    }

    private static int ReportOne(string latest, string earlier)
    {
        var watch = Stopwatch.StartNew();
        var report = SeasonReport.Open(latest, earlier);
        Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  open {watch.Elapsed.TotalSeconds:0.00} s"));
        (string Name, Func<Block> Make)[] blocks =
        [
            ("head", report.Head), ("answers", report.Answers), ("squad", report.SquadChange), ("trends", report.Trends), ("players", report.WhoChanged), ("responses", report.HowGainsDiffer),
            ("transfer", report.Transfer), ("load", report.Load), ("tests", report.Tests), ("took part", report.WhoTookPart), ("held back", report.HeldBack), ("methods", report.Methods),
            ("cautions", report.Cautions), ("provenance", report.Provenance),
        ];
        var characters = 0;
        foreach (var (name, make) in blocks)
        {
            var from = watch.Elapsed;
            characters += make().ToHtml().Length;
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {name} {(watch.Elapsed - from).TotalSeconds:0.00} s"));
        }

        var seconds = watch.Elapsed.TotalSeconds;
        using var self = Process.GetCurrentProcess();
        Console.Out.Write(string.Create(CultureInfo.InvariantCulture, $"{seconds:R} {self.TotalProcessorTime.TotalSeconds:R} {self.PeakWorkingSet64 / 1048576.0:R} {characters}"));
        return 0;
    }
}
