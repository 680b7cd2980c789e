using System.Globalization;
using Analytics.Planning.Solving;
using Analytics.Simulation.WeekStudy;
using Analytics.Simulation.WeekStudy.Document;

namespace Analytics.Simulation.Commands;

/// <summary><c>week-study --out FILE</c>: who gets which sets of a planned week, held against known truth.</summary>
public static class WeekStudyCommand
{
    public const string Usage = "week-study [--squads 200] [--seed 7000] [--effort 2] [--threads N] --out FILE      hold the sets of planned weeks against the truth";

    public static int Run(Arguments arguments, TextWriter output)
    {
        var path = arguments.Required("--out");
        var squads = (int)Math.Min(arguments.Number("--squads", 200), int.MaxValue);
        if (squads < 1) throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"--squads {squads}: 1 or more are needed."));
        var seed = (ulong)arguments.Number("--seed", 7000);
        var threads = Math.Max(1, (int)Math.Min(arguments.Number("--threads", Environment.ProcessorCount), int.MaxValue));
        var effort = arguments.Text("--effort", "2");
        if (!double.TryParse(effort, NumberStyles.Float, CultureInfo.InvariantCulture, out var work) || !(work is > 0 and <= 100)) throw new ArgumentException($"--effort {effort}: a number above 0, at most 100, is needed.");
        var lines = TextWriter.Synchronized(output);
        // No clock: it would let the load of the machine decide what is found.
        PlanOptions options = new(work, Clock: 3600) { GoodEnough = 0.03 };
        var outcomes = WeekStudyRun.Run(squads, seed, options, threads, done =>
        {
            if (done % 10 == 0) lines.WriteLine($"{done} of {squads} squads");
        });
        File.WriteAllText(path, WeekStudyDocument.Of(outcomes, seed, options));
        return 0;
    }
}
