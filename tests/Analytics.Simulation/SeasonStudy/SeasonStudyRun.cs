using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.SeasonStudy;

/// <summary>Regenerates the demo season many times and lets every section count.</summary>
public static class SeasonStudyRun
{
    /// <summary>Runs every scenario any section asks for, the scenarios side by side, each season once for all sections.</summary>
    /// <param name="sections">The sections; they hold the counts afterwards.</param>
    /// <param name="seasons">Seasons of each scenario.</param>
    /// <param name="seed">Seed of the first; season i has seed + i.</param>
    /// <param name="threads">Threads at most.</param>
    /// <param name="progress">Told the scenario and the seasons done.</param>
    public static void Run(IReadOnlyList<IStudySection> sections, int seasons, ulong seed, int threads, Action<string, int>? progress = null)
    {
        var scenarios = sections.SelectMany(s => s.Scenarios).Distinct().ToList();
        Parallel.ForEach(scenarios, new ParallelOptions { MaxDegreeOfParallelism = threads }, scenario =>
        {
            var concerned = sections.Where(s => s.Scenarios.Contains(scenario)).ToList();
            for (var season = 0; season < seasons; season++)
            {
                var chain = SeasonChain.Run(season, seed + (ulong)season, scenario.Options);
                foreach (var section in concerned) section.Add(scenario, chain);
                progress?.Invoke(scenario.Name, season + 1);
            }
        });
        foreach (var section in sections) section.Run(seasons, seed);
    }
}
