using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.Commands;

/// <summary><c>error-rates [--seasons N] [--seed N] --out FILE</c>: how often the library's conclusions are wrong.</summary>
public static class ErrorRatesCommand
{
    public const string Usage = "error-rates [--seasons 200] [--seed 1000] --out FILE      hold the conclusions of regenerated seasons against the truth";

    private const int Seasons = 200, Seed = 1000;

    public static int Run(Arguments arguments, TextWriter progress)
    {
        var target = arguments.Required("--out");
        var seasons = (int)arguments.Number("--seasons", Seasons);
        if (seasons < 2) throw new ArgumentException($"--seasons {seasons}: 2 or more are needed for an error of the rates.");
        var seed = (ulong)arguments.Number("--seed", Seed);
        var studies = new[] { Scenario.AsKept, Scenario.ModelsTrue, Scenario.KnownSizes }.Select(scenario =>
        {
            var study = ErrorRateStudy.Run(scenario, seasons, seed, done =>
            {
                if (done % 20 == 0) progress.WriteLine($"{scenario.Name}: {done} of {seasons} seasons");
            });
            return study;
        }).ToList();
        File.WriteAllText(target, ErrorRatesDocument.Write(studies[0], studies[1], studies[2]));
        return 0;
    }
}
