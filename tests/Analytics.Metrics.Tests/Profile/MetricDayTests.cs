using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using static Analytics.Metrics.Tests.Profile.Invented;

namespace Analytics.Metrics.Tests.Profile;

public class MetricDayTests
{
    [Theory]
    [InlineData(Direction.Higher, TrialRule.Best, 52)]
    [InlineData(Direction.Lower, TrialRule.Best, 47)]
    [InlineData(Direction.Neither, TrialRule.Best, 52)]
    [InlineData(Direction.Higher, TrialRule.Mean, 49)]
    public void Of_ThreeAttempts_FollowsTheRule(Direction better, TrialRule rule, double expected)
        => Assert.Equal(expected, MetricDay.Of(Metric(better: better, rule: rule), [Day("a1", 48, 52, 47)]).For("a1")!.Value);

    [Fact]
    public void Of_MixedSeries_ComparesTheCommonestAndListsTheRest()
    {
        var day = MetricDay.Of(Metric(), [
            Day("a1", March, Number(5, "electronic"), Number(6, "electronic")),
            Day("a2", March, Number(4, "hand")),
            Day("a3", March, Number(5.5, "electronic"), Number(9, "hand")),
            Day("a4", March),
        ]);
        Assert.Equal("electronic", day.Series);
        Assert.Equal(["a1", "a3"], day.Values.Select(v => v.AthleteId));
        Assert.Equal(5.5, day.For("a3")!.Value);
        Assert.Equal(["a2", "a4"], day.WithoutValue);
        Assert.Equal([("a2", 4.0), ("a3", 9.0)], day.NotCompared.Select(n => (n.AthleteId, n.Value)));
        Assert.Equal("measured by hand; the squad by electronic", day.NotCompared[0].Reason);
    }

    // One athlete on each scale: the scale with more attempts, then the one first by name.
    [Fact]
    public void Of_TiedSeries_DecidesTheSameWayAlways()
    {
        Assert.Equal("mat", MetricDay.Of(Metric(), [Day("a1", March, Number(5, "mat"), Number(5, "mat")), Day("a2", March, Number(4, "force plate"))]).Series);
        Assert.Equal("force plate", MetricDay.Of(Metric(), [Day("a1", March, Number(5, "mat")), Day("a2", March, Number(4, "force plate"))]).Series);
    }

    [Fact]
    public void Of_SeriesAsked_IsTakenEvenIfRare()
        => Assert.Equal(["a2"], MetricDay.Of(Metric(), [Day("a1", March, Number(5, "x")), Day("a3", March, Number(5, "x")), Day("a2", March, Number(4, "y"))], "y").Values.Select(v => v.AthleteId));

    [Fact]
    public void Of_NotANumber_IsListedNotUsed()
    {
        var day = MetricDay.Of(Metric(), [Day("a1", double.NaN, 50), Day("a2", double.PositiveInfinity)]);
        Assert.Equal(50, day.For("a1")!.Value);
        Assert.Equal(["a2"], day.WithoutValue);
        Assert.Equal(["not a number", "not a number"], day.NotCompared.Select(n => n.Reason));
    }

    [Fact]
    public void Of_SameAthleteTwice_AddsAttempts()
    {
        var value = Assert.Single(MetricDay.Of(Metric(), [Day("a1", March, Number(50)), Day("a1", April, Number(55))]).Values);
        Assert.Equal((55, 2, April), (value.Value, value.Attempts.Count, value.Date));
    }

    [Fact]
    public void Of_Best_CarriesErrorAndDoubtOfTheBestOnly()
    {
        var value = MetricDay.Of(Metric(), [Day("a1", March, Number(50, error: 1, doubt: "slipped"), Number(55, error: 2))]).For("a1")!;
        Assert.Equal(2, value.StandardError);
        Assert.Empty(value.Doubts);
    }

    // Mean of two values with errors 3 and 4: error √(9 + 16)/2 = 2.5.
    [Fact]
    public void Of_Mean_CombinesErrorsAndKeepsAllDoubts()
    {
        var value = MetricDay.Of(Metric(rule: TrialRule.Mean), [Day("a1", March, Number(50, error: 3, doubt: "wind"), Number(55, error: 4))]).For("a1")!;
        Assert.Equal(2.5, value.StandardError!.Value, 12);
        Assert.Equal(["wind"], value.Doubts);
        Assert.Null(MetricDay.Of(Metric(rule: TrialRule.Mean), [Day("a1", March, Number(50, error: 3), Number(55))]).For("a1")!.StandardError);
    }

    [Fact]
    public void Of_ImplausibleValue_IsKeptWithADoubt()
        => Assert.Equal(["outside the plausible range 0 to 1000 kg"], MetricDay.Of(Metric(), [Day("a1", 1200)]).For("a1")!.Doubts);

    [Fact]
    public void Of_NothingDone_HasNoSeries()
    {
        var day = MetricDay.Of(Metric(), [Day("a1")]);
        Assert.Null(day.Series);
        Assert.Equal(["a1"], day.WithoutValue);
        Assert.Empty(MetricDay.Of(Metric(), []).Values);
    }
}
