using Analytics.Metrics.Catalogue;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Notebooks.WholeSeason;
using static Analytics.Notebooks.Tests.OnTrial.Sketches;

namespace Analytics.Notebooks.Tests.OnTrial;

/// <summary>Metrics on trial in the report of a season.</summary>
public sealed class SeasonWithTests : IDisposable
{
    private readonly WrittenSeason _season = ReportSeasons.ThreeDays(squatGain: 25);

    public void Dispose() => _season.Dispose();

    private SeasonReport Report => SeasonReport.Open(_season.Folder);

    private static Func<SeasonReport, Block>[] WithTrials { get; } =
        [r => r.SquadChange(), r => r.Trends(), r => r.WhoChanged(), r => r.HowGainsDiffer(), r => r.Transfer(), r => r.Tests(), r => r.Methods()];

    [Fact]
    public void With_SoundSketch_StandsWhereAReviewedMetricDoesMarked()
    {
        var report = Report.With(JumpBySprint());
        Assert.Contains("With 1 trial metric, not reviewed: Jump by sprint.", report.Head().ToText(), StringComparison.Ordinal);
        Assert.All(WithTrials, block => Assert.Contains("ump by sprint (trial metric)", block(report).ToText(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Quality.ExplosivePower)]
    [InlineData(Quality.MaximalSpeed)]
    public void With_SoundSketch_ChangesNoOtherNumber(Quality quality)
    {
        var (plain, with) = (Report, Report.With(JumpBySprint() with { Quality = quality }));
        var unchanged = new Func<SeasonReport, Block>[] { r => r.Answers(), r => r.Load(), r => r.WhoTookPart(), r => r.HeldBack(), r => r.Provenance() };
        Assert.All(unchanged, block => Assert.Equal(block(plain).ToHtml(), block(with).ToHtml()));
        Assert.All(WithTrials, block => Assert.Empty(Missing(block(plain), block(with))));
        Assert.All(WithTrials, block => Assert.NotEmpty(Missing(block(with), block(plain))));
    }

    // Squat and jump in the room beside 10 m, 20 m and what else is run: pairs are counted with the sketch in, and the others stay as they were.
    [Fact]
    public void With_PairsOfATrialMetric_AreAdjustedForAllPairs()
    {
        var text = string.Join(' ', Lines(Report.With(JumpBySprint()).Transfer()));
        Assert.Contains("Gains of trial metrics beside the others", text, StringComparison.Ordinal);
        Assert.Matches(@"Pairs with a trial metric are adjusted for all \d+ pairs, those further up included", text);
    }

    [Fact]
    public void With_Minutes_AreThoseOfTheSketch()
    {
        // 12 players at 2 minutes each; without any, nothing beyond tests taken anyway.
        Assert.Matches(@"Jump by sprint \(trial metric\).* 24 \(as its sketch says\)", string.Join(' ', Lines(Report.With(JumpBySprint() with { Minutes = 2 }).Tests())));
        Assert.Matches(@"Jump by sprint \(trial metric\).* 0 \(worked out of tests taken anyway\)", string.Join(' ', Lines(Report.With(JumpBySprint()).Tests())));
    }

    [Fact]
    public void With_FaultAndFailure_AreToldUnderTheHead()
    {
        var head = Report.With(Jump("Bad Id", "Bad"), FailsBetween(30, 39.9)).Head().ToText();
        Assert.Contains("Bad is left out. The identifier 'Bad Id'", head, StringComparison.Ordinal);
        Assert.Matches(@"Fails, for Player P0\d on [^:]*: the formula failed", head);
    }

    [Fact]
    public void With_SameTwice_GivesTheSameBytes()
    {
        string Html() => string.Concat(WithTrials.Select(b => b(Report.With(JumpBySprint())).ToHtml()));
        Assert.Equal(Html(), Html());
    }

    [Fact]
    public void With_HostileLabel_IsTextEverywhere()
    {
        var report = Report.With(Jump("hostile", Hostile));
        var html = string.Concat(WithTrials.Append(r => r.Head()).Select(b => b(report).ToHtml()));
        Assert.DoesNotContain("<script>alert", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;alert(1)&lt;/script&gt;", html, StringComparison.Ordinal);
    }
}
