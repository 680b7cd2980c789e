using Analytics.Simulation.ErrorRates;
using Analytics.Simulation.ErrorRates.Grid;

namespace Analytics.Simulation.Tests.ErrorRates;

public class ErrorRateStudyTests
{
    private static readonly ErrorRateStudy Kept = ErrorRateStudy.Run(Scenario.AsKept, 2, 1);
    private static readonly GridStudy Few = GridStudy.Run(Registry.Intervals, Registry.Verdicts, Registry.Rates, 2, 1, 2);
    private static readonly ErrorRateStudy Sizes = ErrorRateStudy.Run(Scenario.KnownSizes, 2, 1);

    /// <summary>Every kind of count finds something to count; a chain that silently compares nothing would give empty tables.</summary>
    [Fact]
    public void Run_TwoSeasons_AsksEveryQuestion()
    {
        Assert.All(Kept.OverTheSeason.Concat(Kept.SinceApril).Concat(Kept.MixedLifts), r => Assert.True(r.Covered.Asked > 10, r.Metric.Id));
        Assert.All(Kept.DayValues, r => Assert.True(r.Covered.Asked > 50, r.Metric.Id));
        Assert.All(Kept.Estimated, r => Assert.True(r.Covered.Asked > 20, r.Name));
        Assert.Equal(9, Kept.HeldBack.Found.Count);
        Assert.True(Kept.Chosen.Speed.Asked > 500);
    }

    /// <summary>The same runs are judged whatever the start model: one without a run-in to be seen falls back and is not left out.</summary>
    [Fact]
    public void Run_EveryStartModel_JudgesTheSameRuns()
    {
        Assert.Equal(Kept.Chosen.Speed.Asked, Kept.RunIn.Speed.Asked);
        Assert.Equal(Kept.Chosen.Speed.Asked, Kept.Still.Speed.Asked);
        // The run-in scatters more and is nearer on average; the still start is far off.
        Assert.True(Kept.RunIn.TimeConstantSpread > Kept.Chosen.TimeConstantSpread);
        Assert.True(Math.Abs(Kept.RunIn.TimeConstantBias) < Math.Abs(Kept.Chosen.TimeConstantBias));
        Assert.True(Kept.Still.TimeConstantBias < -0.2);
    }

    /// <summary>All planted errors and nothing else: quick runs off a late clock pass.</summary>
    [Fact]
    public void Run_TwoSeasons_HoldsBackWhatWasPlantedAndNothingElse()
    {
        Assert.All(Kept.HeldBack.Found, kind => Assert.Equal(1, kind.Value.Rate));
        Assert.Equal(0, Kept.HeldBack.Innocent);
    }

    /// <summary>The truth fits what is measured: an interval that almost never or always held it would mean a wrong unit or day.</summary>
    [Fact]
    public void Run_TwoSeasons_CoversNearTheStatedLevel()
        => Assert.All(Kept.OverTheSeason, r => Assert.True(r.Covered.Rate is > 0.80 and <= 1, $"{r.Metric.Id}: {r.Covered.Rate}"));

    [Fact]
    public void Write_SameSeasons_GivesTheSameDocumentWithEveryMetric()
    {
        var first = ErrorRatesDocument.Write(ErrorRatesDocument.Seasons(Kept, Kept, Sizes), Few);
        Assert.Equal(first, ErrorRatesDocument.Write(ErrorRatesDocument.Seasons(ErrorRateStudy.Run(Scenario.AsKept, 2, 1), Kept, Sizes), Few));
        Assert.All(JudgedMetric.All, m => Assert.Contains(Analytics.Metrics.Catalogue.MetricCatalogue.Get(m.Id).Label, first, StringComparison.Ordinal));
        Assert.DoesNotContain("NaN", first, StringComparison.Ordinal);
    }

    /// <summary>A second half written anew leaves the first as it stands, and the command in the head names its seasons.</summary>
    [Fact]
    public void Kept_DocumentWrittenBefore_GivesItsSeasonsBack()
    {
        var seasons = ErrorRatesDocument.Seasons(Kept, Kept, Sizes);
        var document = ErrorRatesDocument.Write(seasons, Few);
        Assert.Equal(seasons, ErrorRatesDocument.Kept(document));
        Assert.Contains("error-rates --seasons 2 --seed 1 --draws 2 --grid-seed 1 --out", document, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => ErrorRatesDocument.Kept("# Something else"));
    }

    [Fact]
    public void SizeOfTrueChange_KnownSizes_IsNearThreeAndFiveTypicalErrors()
    {
        // The typical error of a season is known to about 10 %, and lifts carry their steps besides.
        Assert.All(Sizes.Hits, h => Assert.InRange(h.Size / h.NominalSize, 0.75, 1.25));
    }
}
