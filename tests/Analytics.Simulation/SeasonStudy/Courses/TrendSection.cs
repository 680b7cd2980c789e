using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.SeasonStudy.Courses;

/// <summary>Do the trend's intervals hold the true mean change?</summary>
public sealed class TrendSection : IStudySection
{
    private readonly IReadOnlyList<CourseRates> _rates = [.. JudgedMetric.All.Select(m => new CourseRates(m.Id))];

    public IReadOnlyList<Scenario> Scenarios { get; } = [Scenario.AsKept];

    /// <summary>One a judged metric.</summary>
    public IReadOnlyList<CourseRates> Rates => _rates;

    public void Add(Scenario scenario, SeasonChain chain)
    {
        foreach (var (rates, measure) in _rates.Zip(SeasonMeasures.Of(chain).All)) rates.Add(chain, measure);
    }

    public string Write()
    {
        var table = new MarkdownTable("metric", "squad, these athletes", "groups, these athletes", "periods between", "squad, others like them", "groups, others like them", "width, these to others", "own slopes");
        foreach (var r in _rates) Row(table, r.MetricId, [r]);
        Row(table, "all", _rates);
        return $"""
            ## Trends of the squad and its groups

            Coverage of the 95 % intervals of the mean change since the baseline, per cent. **These athletes**: against the mean true change of the athletes in the course,
            which is what "did the squad change" asks; the interval in the report. **Others like them**: the wider interval, against the mean true change of the
            population the generator draws athletes from. How differently athletes respond is an error of the second and none of the first.

            Over all metrics: squad {MarkdownTable.Percent(Pooled(_rates, r => r.Squad))} %, groups {MarkdownTable.Percent(Pooled(_rates, r => r.Groups))} %; wanted is 93 to 97 %.

            {table}
            "Periods between" of the lifts are sets of repetitions in March: the interval adds what an equation may get wrong about everybody, by the scatter between
            published equations, which is more than it does in this demo. **Own slopes**: seasons in which the data bore out a slope of each athlete in all models.
            Clear verdicts in the wrong direction: {MarkdownTable.Percent(Pooled(_rates, r => r.WrongWay))} %.

            """;
    }

    private static void Row(MarkdownTable table, string name, IReadOnlyList<CourseRates> rates) => table.Row(
        name,
        MarkdownTable.Coverage(Pooled(rates, r => r.Squad)),
        MarkdownTable.Coverage(Pooled(rates, r => r.Groups)),
        MarkdownTable.Coverage(Pooled(rates, r => r.Between)),
        MarkdownTable.Coverage(Pooled(rates, r => r.Others(true))),
        MarkdownTable.Coverage(Pooled(rates, r => r.Others(false))),
        MarkdownTable.Number(rates.Average(r => r.WidthRatio), 2),
        MarkdownTable.Percent(Pooled(rates, r => r.OwnSlopes)));

    private static Tally Pooled(IEnumerable<CourseRates> rates, Func<CourseRates, Tally> of) => Tally.Sum(rates.Select(of));
}
