using System.Diagnostics;
using System.Globalization;
using Analytics.Simulation.BenchStudy;
using Analytics.Simulation.BenchStudy.Document;

namespace Analytics.Simulation.Commands;

/// <summary><c>bench-study --out FILE</c>: how often the bench is right about sketches with known truth.</summary>
public static class BenchStudyCommand
{
    public const string Usage = "bench-study [--squads 200] [--seed 5000] [--threads N] --out FILE      hold the verdicts on sketched metrics against the truth";

    private static readonly int[] s_days = [0, 1, 2, 3, 4];

    public static int Run(Arguments arguments, TextWriter output)
    {
        var path = arguments.Required("--out");
        var squads = (int)Math.Min(arguments.Number("--squads", 200), int.MaxValue);
        if (squads < 2) throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"--squads {squads}: 2 or more are needed for a spread over squads."));
        var seed = (ulong)arguments.Number("--seed", 5000);
        var threads = Math.Max(1, (int)Math.Min(arguments.Number("--threads", Environment.ProcessorCount), int.MaxValue));
        var lines = TextWriter.Synchronized(output);
        var before = Process.GetCurrentProcess().TotalProcessorTime;
        var outcomes = BenchStudyRun.Each(squads, seed, threads, s_days, BenchSquadOutcome.Of, done =>
        {
            if (done % 10 == 0) lines.WriteLine($"{done} of {squads} squads");
        });
        var used = Process.GetCurrentProcess().TotalProcessorTime - before;
        lines.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{used.TotalSeconds / squads:0.0} s of processor time a squad"));
        File.WriteAllText(path, BenchStudyDocument.Of(outcomes, seed));
        return 0;
    }
}
