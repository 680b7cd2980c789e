using System.Diagnostics;
using System.Globalization;
using Analytics.Season;

namespace Analytics.Benchmarks.SeasonRows;

/// <summary>Time and memory of reading and checking a season, at three sizes, each in a process of its own.</summary>
internal sealed class SeasonRowsBenchmark : IBenchmark
{
    private const int Repeats = 3;
    private static readonly int[] Sizes = [250_000, 500_000, 1_000_000];

    public string Name => "season-rows";

    public string What => "seconds and peak memory of reading and checking up to 1,000,000 trial rows";

    public int Run(string[] args)
    {
        if (args is ["read", var folder]) return ReadOne(folder);
        var root = Path.Combine(Path.GetTempPath(), $"season-rows-{Environment.ProcessId}");
        try
        {
            var measured = Sizes.Select(size => Measure(root, size)).ToList();
            Print(measured);
            return measured.Any(m => m.HeldBack != 0) ? 2 : 0;
        }
        finally
        {
            if (Directory.Exists(root)) Directory.Delete(root, recursive: true);
        }
    }

    private static Measurement Measure(string root, int size)
    {
        var folder = Path.Combine(root, size.ToString(CultureInfo.InvariantCulture));
        BigSeason.Write(folder, (size + BigSeason.RowsPerDay - 1) / BigSeason.RowsPerDay);
        var runs = Enumerable.Range(0, Repeats).Select(_ => Child(folder)).ToList();
        Directory.Delete(folder, recursive: true);
        return new Measurement(runs[0].Rows, runs[0].HeldBack, runs.Min(r => r.Seconds), runs.Max(r => r.Seconds), runs.Min(r => r.Cpu), runs.Max(r => r.PeakMegabytes));
    }

    /// <summary>A process of its own, so that one size does not warm up or fill the memory of the next.</summary>
    private static (int Rows, int HeldBack, double Seconds, double Cpu, double PeakMegabytes) Child(string folder)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath) is "dotnet") start.ArgumentList.Add(typeof(SeasonRowsBenchmark).Assembly.Location);
        foreach (var argument in (string[])["season-rows", "read", folder]) start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        var fields = process.StandardOutput.ReadToEnd().Split(' ');
        process.WaitForExit();
        return (int.Parse(fields[0], CultureInfo.InvariantCulture), int.Parse(fields[1], CultureInfo.InvariantCulture), double.Parse(fields[2], CultureInfo.InvariantCulture), double.Parse(fields[3], CultureInfo.InvariantCulture), double.Parse(fields[4], CultureInfo.InvariantCulture));
    }

    private static int ReadOne(string folder)
    {
        var watch = Stopwatch.StartNew();
        var season = SeasonReader.Read(folder);
        var seconds = watch.Elapsed.TotalSeconds;
        using var self = Process.GetCurrentProcess();
        Console.Out.Write(string.Create(CultureInfo.InvariantCulture, $"{season.RowsRead} {season.RowsHeldBack} {seconds:R} {self.TotalProcessorTime.TotalSeconds:R} {self.PeakWorkingSet64 / 1048576.0:R}"));
        return 0;
    }

    private static void Print(IReadOnlyList<Measurement> measured)
    {
        Console.Out.WriteLine($"best and worst of {Repeats} cold processes, {Environment.ProcessorCount} cores");
        Console.Out.WriteLine($"{"rows",10} {"best s",8} {"worst s",8} {"rows/s",10} {"CPU s",8} {"peak MB",8}");
        foreach (var m in measured)
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{m.Rows,10} {m.Best,8:0.00} {m.Worst,8:0.00} {m.Rows / m.Best,10:0} {m.Cpu,8:0.00} {m.PeakMegabytes,8:0}"));
        Measurement small = measured[0], large = measured[^1];
        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"CPU time per row at {large.Rows} rows over that at {small.Rows}: {large.Cpu / large.Rows / (small.Cpu / small.Rows):0.00} (1 is linear, less means a fixed start-up cost)"));
    }

    private sealed record Measurement(int Rows, int HeldBack, double Best, double Worst, double Cpu, double PeakMegabytes);
}
