using Analytics.Simulation.ErrorRates;
using Analytics.Simulation.SeasonStudy;
using Analytics.Simulation.SeasonStudy.Courses;

namespace Analytics.Simulation.Tests.SeasonStudy;

public class SeasonStudyTests
{
    private static readonly Lazy<IReadOnlyList<IStudySection>> s_sections = new(() => Run(2));

    [Fact]
    public void Run_TwoSeasons_CountsEveryMetricSquadAndGroup()
    {
        var trends = s_sections.Value.OfType<TrendSection>().Single();
        Assert.Equal(JudgedMetric.All.Select(m => m.Id), trends.Rates.Select(r => r.MetricId));
        Assert.All(trends.Rates, r => Assert.Equal(2, r.Squad.Asked));
        // Eight position groups a season; the two lines jump off a lower box, which is another scale.
        Assert.All(trends.Rates, r => Assert.Equal(2 * (r.MetricId == "drop_jump_rsi" ? 6 : 8), r.Groups.Asked));
    }

    /// <summary>A wrong unit, day or sign of the truth would leave nearly every interval empty. Two seasons, some 220 mean changes and 1,600 single ones that hang together: wide enough for luck.</summary>
    [Fact]
    public void Run_TwoSeasons_HoldsTheTruthMostly()
    {
        var trends = s_sections.Value.OfType<TrendSection>().Single();
        Assert.InRange(Tally.Sum(trends.Rates.Select(r => r.Groups)).Rate, 0.88, 1);
        var changes = s_sections.Value.OfType<ChangeSection>().Single();
        foreach (var scenario in changes.Scenarios)
        {
            Assert.InRange(Tally.Sum(changes.Of(scenario).Select(r => r.Covered)).Rate, 0.90, 0.99);
            Assert.InRange(Tally.Sum(changes.Of(scenario).Select(r => r.FalseClear)).Rate, 0.005, 0.10);
        }

        Assert.InRange(Tally.Sum(changes.Of(Scenario.KnownSizes).Select(r => r.Found)).Rate, 0.80, 1);
    }

    [Fact]
    public void Write_SameSeed_IsTheSameOnAnyNumberOfThreads()
    {
        var first = SeasonStudyDocument.Of(s_sections.Value, 2, 3000);
        Assert.Equal(first, SeasonStudyDocument.Of(Run(1), 2, 3000));
        Assert.All(JudgedMetric.All, m => Assert.Contains($"| {m.Id} |", first, StringComparison.Ordinal));
        Assert.DoesNotContain("NaN", first, StringComparison.Ordinal);
        Assert.Contains("season-study --seasons 2 --seed 3000 --out", first, StringComparison.Ordinal);
    }

    private static IReadOnlyList<IStudySection> Run(int threads)
    {
        IReadOnlyList<IStudySection> sections = [new TrendSection(), new ChangeSection(), new ResponseSection()];
        SeasonStudyRun.Run(sections, 2, 3000, threads);
        return sections;
    }
}
