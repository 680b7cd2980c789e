using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.SeasonStudy.Courses;

/// <summary>Does the interval of the spread of responses hold the true spread?</summary>
public sealed class ResponseSection : IStudySection
{
    private readonly IReadOnlyList<SpreadRates> _rates = [.. JudgedMetric.All.Select(m => new SpreadRates(m.Id))];

    public IReadOnlyList<Scenario> Scenarios { get; } = [Scenario.AsKept];

    /// <summary>One a judged metric.</summary>
    public IReadOnlyList<SpreadRates> Rates => _rates;

    public void Add(Scenario scenario, SeasonChain chain)
    {
        foreach (var (rates, measure) in _rates.Zip(SeasonMeasures.Of(chain).All)) rates.Add(chain, measure);
    }

    public string Write()
    {
        var table = new MarkdownTable("metric", "these athletes", "population", "estimated over true SD");
        foreach (var r in _rates)
            table.Row(r.MetricId, MarkdownTable.Coverage(r.These), MarkdownTable.Coverage(r.Population), MarkdownTable.Number(r.Ratio, 2));
        table.Row("all", MarkdownTable.Coverage(Tally.Sum(_rates.Select(r => r.These))), MarkdownTable.Coverage(Tally.Sum(_rates.Select(r => r.Population))), "");
        return $"""
            ## Spread of individual responses

            Coverage of the 95 % interval of the SD of true responses, test error taken off. A third of the athletes do not respond at all and the others about a mean of
            their own, so responses are not normal as the interval supposes.

            {table}
            """;
    }
}
