using System.Globalization;
using Analytics.Simulation.SeasonStudy;

namespace Analytics.Simulation.Commands;

/// <summary><c>season-study --out FILE</c>: what the season report's conclusions are worth, held against known truth.</summary>
public static class SeasonStudyCommand
{
    public const string Usage = "season-study [--seasons 200] [--seed 3000] [--threads N] --out FILE      hold the season report's conclusions against the truth";

    public static int Run(Arguments arguments, TextWriter output)
    {
        var path = arguments.Required("--out");
        var seasons = (int)Math.Min(arguments.Number("--seasons", 200), int.MaxValue);
        if (seasons < 2)
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"--seasons {seasons}: 2 or more are needed for an error of the rates."));
        var seed = (ulong)arguments.Number("--seed", 3000);
        var threads = Math.Max(1, (int)Math.Min(arguments.Number("--threads", Environment.ProcessorCount), int.MaxValue));
        var lines = TextWriter.Synchronized(output);
        var sections = StudySections.All();
        SeasonStudyRun.Run(sections, seasons, seed, threads, (scenario, done) =>
        {
            if (done % 20 == 0) lines.WriteLine($"{scenario}: {done} of {seasons} seasons");
        });
        File.WriteAllText(path, SeasonStudyDocument.Of(sections, seasons, seed));
        return 0;
    }
}
