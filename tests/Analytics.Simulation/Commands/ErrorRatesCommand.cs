using System.Globalization;
using Analytics.Simulation.ErrorRates;
using Analytics.Simulation.ErrorRates.Grid;
using Analytics.Simulation.ErrorRates.Grid.Document;

namespace Analytics.Simulation.Commands;

/// <summary>
/// <c>error-rates --out FILE</c>: how often the library's conclusions are wrong. Writes the document, every case of the grid beside it as CSV, and the
/// figures a report quotes about itself. Without seasons (0) the part of whole seasons is kept as the document has it.
/// </summary>
public static class ErrorRatesCommand
{
    public const string Usage = "error-rates [--seasons 200] [--seed 1000] [--draws 20000] [--grid-seed 1] [--threads N] [--quoted FILE] --out FILE      hold conclusions against the truth";

    /// <summary>Embedded in the reports' library.</summary>
    public const string QuotedFile = "src/Analytics.Notebooks/TestingDay/measured-rates.csv";

    private const int Seasons = 200, Seed = 1000, Draws = 20_000, GridSeed = 1;

    public static int Run(Arguments arguments, TextWriter progress)
    {
        var target = arguments.Required("--out");
        var quoted = arguments.Text("--quoted", QuotedFile);
        var kept = arguments.Number("--seasons", Seasons) == 0 ? ErrorRatesDocument.Kept(File.ReadAllText(target)) : null;
        var draws = AtLeastTwo(arguments, "--draws", Draws);
        var threads = Math.Max(1, (int)arguments.Number("--threads", Environment.ProcessorCount));
        if (!Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(quoted))))
            throw new ArgumentException($"--quoted {quoted}: no such folder; start from the root of the repository or name another file.");

        var grid = GridStudy.Run(Registry.Intervals, Registry.Verdicts, Registry.Rates, draws, (ulong)arguments.Number("--grid-seed", GridSeed), threads, progress.WriteLine);
        var seasons = kept ?? OfSeasons(AtLeastTwo(arguments, "--seasons", Seasons), (ulong)arguments.Number("--seed", Seed), threads, progress);
        File.WriteAllText(target, ErrorRatesDocument.Write(seasons, grid));
        File.WriteAllText(Path.ChangeExtension(target, ".csv"), EveryCase.Csv(grid));
        File.WriteAllText(quoted, QuotedFigures.Csv(grid));
        return 0;
    }

    /// <summary>The three kinds of season side by side; each is counted one season after the other.</summary>
    private static string OfSeasons(int seasons, ulong seed, int threads, TextWriter progress)
    {
        Scenario[] scenarios = [Scenario.AsKept, Scenario.ModelsTrue, Scenario.KnownSizes];
        var studies = new ErrorRateStudy[scenarios.Length];
        var lines = TextWriter.Synchronized(progress);
        Parallel.For(0, scenarios.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => studies[i] = ErrorRateStudy.Run(scenarios[i], seasons, seed, done =>
        {
            if (done % 20 == 0) lines.WriteLine($"{scenarios[i].Name}: {done} of {seasons} seasons");
        }));
        return ErrorRatesDocument.Seasons(studies[0], studies[1], studies[2]);
    }

    private static int AtLeastTwo(Arguments arguments, string name, int otherwise)
    {
        var value = arguments.Number(name, otherwise);
        return value is >= 2 and <= int.MaxValue
            ? (int)value
            : throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"{name} {value}: 2 or more are needed for an error of the rates."));
    }
}
