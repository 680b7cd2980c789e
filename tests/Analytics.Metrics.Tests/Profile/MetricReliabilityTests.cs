using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using static Analytics.Metrics.Tests.Profile.Invented;

namespace Analytics.Metrics.Tests.Profile;

public class MetricReliabilityTests
{
    // The ten invented athletes of tests/oracles/statistics/retest-three-trials.csv; typical errors and CV from R 4.2.2.
    private static readonly double[] s_first = [38.2, 41.5, 35.1, 44.8, 39.6, 33.4, 47.2, 40.3, 36.9, 42.7];
    private static readonly double[] s_second = [39.0, 41.1, 36.4, 45.9, 38.8, 34.6, 48.1, 41.7, 36.2, 43.5];
    private static readonly double[] s_third = [38.7, 42.6, 36.0, 45.2, 40.3, 34.1, 48.8, 41.0, 37.8, 43.1];

    private static RepeatDays Pair(double[] first, double[] second) => RepeatDays.Pair(Days(March, first), Days(March.AddDays(3), second));

    [Fact]
    public void Of_RetestPair_IsTheSquadsOwnBetweenDayError()
    {
        var found = MetricReliability.Of(Metric(), "", [Pair(s_first, s_second)], []);
        Assert.Equal((ErrorSource.SeasonRetest, ErrorScale.Constant, 9.0), (found.Source, found.Scale, found.DegreesOfFreedom));
        Assert.Equal(0.6029556829, found.Error!.Value, 9);
        Assert.Equal(0.9806414588, found.Consistency!.Value, 9);
        Assert.Equal(0.56, found.Shift!.Mean.Value, 9);
        Assert.Equal("10 athletes of this squad tested on retest days", found.Basis);
        Assert.True(found.HoldsDayToDayVariation);
    }

    [Fact]
    public void Of_ThreeRetestDays_UsesAll()
    {
        var found = MetricReliability.Of(Metric(), "", [new([Days(March, s_first), Days(March, s_second), Days(March, s_third)])], []);
        Assert.Equal(0.5509923707, found.Error!.Value, 9);
        Assert.Equal(18, found.DegreesOfFreedom);
    }

    // A published percentage decides when the retest cannot: CV 1.5756 % in R, of which 1.5633 % is the log error.
    [Fact]
    public void Of_PublishedPercentage_MakesTheRetestErrorProportional()
    {
        var found = MetricReliability.Of(Metric(published: new(4, null, "key")), "", [Pair(s_first, s_second)], []);
        Assert.Equal((ErrorSource.SeasonRetest, ErrorScale.Proportional), (found.Source, found.Scale));
        Assert.Equal(0.0156329742, found.Error!.Value, 9);
        Assert.Equal(1.56329742, found.ErrorAt(100)!.Value, 7);
    }

    // The same retest: an amount above 0 has its error as a share, also when a study gives units; a metric that may be 0 has units.
    [Theory]
    [InlineData(1, null, ErrorScale.Proportional)]
    [InlineData(1, 2.5, ErrorScale.Proportional)]
    [InlineData(0, 2.5, ErrorScale.Constant)]
    [InlineData(-20, null, ErrorScale.Constant)]
    public void Of_NeitherFormClearlyBetter_TakesTheUsualOne(double plausibleLow, double? publishedUnits, ErrorScale expected)
    {
        var metric = Metric(published: publishedUnits is { } units ? new(null, units, "key") : null) with { PlausibleLow = plausibleLow };
        var found = MetricReliability.Of(metric, "", [Pair(s_first, s_second)], []);
        Assert.Equal(expected, found.Scale);
        Assert.Equal(expected == ErrorScale.Proportional ? 0.0156329742 : 0.6029556829, found.Error!.Value, 9);
    }

    // An amount does not keep its share against the data.
    [Fact]
    public void Of_AmountWithTheSameErrorAtEveryLevel_IsFoundConstant()
    {
        double[] first = [10, 20, 40, 80, 160, 320, 640, 15, 60, 240];
        double[] second = [.. first.Select((v, i) => v + (i % 2 == 0 ? 1 : -1))];
        Assert.Equal(ErrorScale.Constant, MetricReliability.Of(Metric() with { PlausibleLow = 1 }, "", [Pair(first, second)], []).Scale);
    }

    // Errors of ±4 % at every level from 10 to 640 fit one share, not one number of units.
    [Fact]
    public void Of_ErrorGrowingWithTheValue_IsFoundProportional()
    {
        double[] first = [10, 20, 40, 80, 160, 320, 640, 15, 60, 240];
        double[] second = [.. first.Select((v, i) => v * (i % 2 == 0 ? 1.04 : 0.96))];
        Assert.Equal(ErrorScale.Proportional, MetricReliability.Of(Metric(), "", [Pair(first, second)], []).Scale);
    }

    // Errors of ±1 unit at every level: the published percentage must give way.
    [Fact]
    public void Of_ErrorTheSameAtEveryLevel_IsFoundConstantAgainstThePublishedForm()
    {
        double[] first = [10, 20, 40, 80, 160, 320, 640, 15, 60, 240];
        double[] second = [.. first.Select((v, i) => v + (i % 2 == 0 ? 1 : -1))];
        Assert.Equal(ErrorScale.Constant, MetricReliability.Of(Metric(published: new(4, null, "key")), "", [Pair(first, second)], []).Scale);
    }

    // Two retest weeks far apart: the gain of 30 between them is no error. Each pair alone gives 0.6030, so both together do.
    [Fact]
    public void Of_TwoRetestPairs_LeavesOutTheChangeBetweenThem()
    {
        var later = Pair([.. s_first.Select(v => v + 30)], [.. s_second.Select(v => v + 30)]);
        var found = MetricReliability.Of(Metric(), "", [Pair(s_first, s_second), later], []);
        Assert.Equal(0.6029556829, found.Error!.Value, 9);
        Assert.Equal(18, found.DegreesOfFreedom);
    }

    // Best of three a day: the error is that of the best, though the other attempts scatter wildly.
    [Fact]
    public void Of_BestOfAttempts_IsTheErrorOfTheBest()
    {
        var first = s_first.Select((v, i) => Day($"a{i + 1}", v, v - 9, v - 5)).ToList();
        var second = s_second.Select((v, i) => Day($"a{i + 1}", v - 12, v)).ToList();
        Assert.Equal(0.6029556829, MetricReliability.Of(Metric(), "", [RepeatDays.Pair(first, second)], []).Error!.Value, 9);
    }

    [Fact]
    public void Of_TooFewRetested_FallsToPublishedAndSaysSo()
    {
        var found = MetricReliability.Of(Metric(published: new(null, 2.5, "key")), "", [Pair(s_first[..7], s_second[..7])], []);
        Assert.Equal((ErrorSource.PublishedStudy, ErrorScale.Constant, 2.5), (found.Source, found.Scale, found.Error!.Value));
        Assert.Equal(("key", double.PositiveInfinity), (found.SourceKey, found.DegreesOfFreedom));
        Assert.Contains("7 athletes did this test twice on the same scale; 8 are needed", found.Cautions[0], StringComparison.Ordinal);
        Assert.Contains("Another group's error", found.Cautions[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Of_PublishedWithAthletes_HasTheirDegreesOfFreedom()
        => Assert.Equal(40, MetricReliability.Of(Metric(published: new(5.8, null, "key", 41)), "", [], []).DegreesOfFreedom);

    [Theory]
    [InlineData("electronic, three-point start", ErrorSource.PublishedStudy)]
    [InlineData("hand, three-point start", ErrorSource.None)]
    [InlineData(null, ErrorSource.None)]
    public void Of_PublishedForOneScale_IsNotLentToAnother(string? series, ErrorSource expected)
    {
        var found = MetricReliability.Of(Metric(published: new(1.2, null, "key", Series: "electronic")), series, [], []);
        Assert.Equal(expected, found.Source);
        if (expected == ErrorSource.None) Assert.Contains("is for electronic measurement and does not hold here", found.Cautions[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Of_RetestOnAnotherScale_DoesNotCount()
        => Assert.Equal(ErrorSource.None, MetricReliability.Of(Metric(), "electronic", [Pair(s_first, s_second)], []).Source);

    [Fact]
    public void Of_RetestsThatAgreeExactly_AreNotTrusted()
    {
        var found = MetricReliability.Of(Metric(published: new(3, null, "key")), "", [Pair(s_first, s_first)], []);
        Assert.Equal(ErrorSource.PublishedStudy, found.Source);
        Assert.Contains("every repeat agrees exactly", found.Cautions[0], StringComparison.Ordinal);
    }

    // Pooled SD of the attempts: (48, 50, 52) and (58, 60, 62) both 2; the best of three scatters 0.7479754 times as much, the mean 1/√3.
    [Theory]
    [InlineData(TrialRule.Best, 1.4959508)]
    [InlineData(TrialRule.Mean, 1.1547005)]
    public void Of_OnlySameDayAttempts_IsALowerBoundForTheDaysValue(TrialRule rule, double expected)
    {
        var found = MetricReliability.Of(Metric(rule: rule), "", [], [[Day("a1", 48, 50, 52), Day("a2", 58, 60, 62)]]);
        Assert.Equal(ErrorSource.SameDayAttempts, found.Source);
        Assert.False(found.HoldsDayToDayVariation);
        Assert.Equal(expected, found.Error!.Value, 7);
        Assert.Contains("no verdict on a change can rest on it", found.Cautions[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Of_Nothing_SaysNoErrorKnown()
    {
        var found = MetricReliability.Of(Metric(), "", [], [[Day("a1", 50)]]);
        Assert.Equal(ErrorSource.None, found.Source);
        Assert.Null(found.ErrorAt(50));
        Assert.Contains("no error known", found.Basis, StringComparison.Ordinal);
    }
}
