using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.SeasonStudy.Courses;

/// <summary>Are single athletes judged as often rightly as the rule says?</summary>
public sealed class ChangeSection : IStudySection
{
    private readonly Dictionary<string, IReadOnlyList<AthleteRates>> _rates;

    public ChangeSection() => _rates = Scenarios.ToDictionary(s => s.Name, _ => (IReadOnlyList<AthleteRates>)[.. JudgedMetric.All.Select(m => new AthleteRates(m.Id))]);

    public IReadOnlyList<Scenario> Scenarios { get; } = [Scenario.AsKept, Scenario.KnownSizes];

    /// <summary>The rates of a scenario, one a judged metric.</summary>
    public IReadOnlyList<AthleteRates> Of(Scenario scenario) => _rates[scenario.Name];

    public void Add(Scenario scenario, SeasonChain chain)
    {
        foreach (var (rates, measure) in Of(scenario).Zip(SeasonMeasures.Of(chain).All)) rates.Add(chain, measure);
    }

    public string Write() => $"""
        ## Changes of single athletes

        From the baseline (mean of test and retest for who did both) to the last day. **False**: clear verdicts for athletes who did not change at all; the rule
        states at most 5.0 %. **Found**: clear verdicts in the right direction for athletes whose true change is at least twice the change that can be told from none; at least 80 % is wanted.
        Over all metrics: found {MarkdownTable.Percent(Tally.Sum(Of(Scenario.AsKept).Select(r => r.Found)))} % in the season as kept and {MarkdownTable.Percent(Tally.Sum(Of(Scenario.KnownSizes).Select(r => r.Found)))} % with known sizes; false {MarkdownTable.Percent(Tally.Sum(Of(Scenario.AsKept).Select(r => r.FalseClear)))} and {MarkdownTable.Percent(Tally.Sum(Of(Scenario.KnownSizes).Select(r => r.FalseClear)))} %.
        The error of a test is learnt from one retest a season and shared by all its athletes, so single metrics lie about 5 % by their luck and by errors that are not quite normal.

        The season as kept:

        {Table(Scenario.AsKept)}
        A season with true changes of 3 and 5 typical errors, all between the last two days:

        {Table(Scenario.KnownSizes)}
        """;

    private MarkdownTable Table(Scenario scenario)
    {
        var table = new MarkdownTable("metric", "covered", "unchanged athletes", "false", "twice detectable", "found", "wrong way");
        foreach (var r in Of(scenario)) Row(table, r.MetricId, [r]);
        Row(table, "all", Of(scenario));
        return table;
    }

    private static void Row(MarkdownTable table, string name, IReadOnlyList<AthleteRates> rates)
    {
        Tally Pooled(Func<AthleteRates, Tally> of) => Tally.Sum(rates.Select(of));
        var (unchanged, found) = (Pooled(r => r.FalseClear), Pooled(r => r.Found));
        table.Row(
            name, MarkdownTable.Coverage(Pooled(r => r.Covered)), MarkdownTable.Count(unchanged), MarkdownTable.Percent(unchanged),
            MarkdownTable.Count(found), MarkdownTable.Percent(found), MarkdownTable.Percent(Pooled(r => r.WrongWay)));
    }
}
