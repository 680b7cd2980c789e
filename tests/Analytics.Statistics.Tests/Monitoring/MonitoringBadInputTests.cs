using Analytics.Statistics.Monitoring;

namespace Analytics.Statistics.Tests.Monitoring;

public sealed class MonitoringBadInputTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Values_that_are_not_finite_are_refused(double bad)
    {
        Assert.Contains("baseline[1]", Assert.Throws<ArgumentException>(() => OwnBaseline.Of([1, bad, 2])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => IndividualsChart.FromBaseline([1, bad, 2]));
        Assert.Throws<ArgumentException>(() => EwmaChart.Known(0, 1).Points([bad]));
        Assert.Throws<ArgumentException>(() => CusumChart.Standardised(0, 1).Points([bad]));
        Assert.Throws<ArgumentException>(() => RunRule.EightOnOneSide.Signals([bad], 0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => EwmaChart.Known(bad, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => CusumChart.Of(0, 1, bad));
        Assert.Throws<ArgumentOutOfRangeException>(() => OwnBaseline.Of([1, 2, 4]).P(bad));
    }

    [Fact]
    public void Too_few_and_equal_baselines_are_refused_in_words()
    {
        Assert.Throws<ArgumentException>(() => OwnBaseline.Of([1]));
        Assert.Throws<ArgumentException>(() => IndividualsChart.FromBaseline([1, 2]));
        Assert.Contains("All 4 baseline values are 7", Assert.Throws<ArgumentException>(() => OwnBaseline.Of([7, 7, 7, 7])).Message, StringComparison.Ordinal);
        Assert.Contains("All 4 baseline values are 7", Assert.Throws<ArgumentException>(() => IndividualsChart.FromBaseline([7, 7, 7, 7])).Message, StringComparison.Ordinal);
        Assert.Contains("More than half", Assert.Throws<ArgumentException>(() => IndividualsChart.FromBaseline([7, 7, 7, 7, 9], MovingRangeCentre.Median)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => EwmaChart.Known(0, 1).Points([]));
    }

    [Fact]
    public void Settings_outside_their_range_are_refused()
    {
        Assert.Contains("0.01 to 1", Assert.Throws<ArgumentOutOfRangeException>(() => EwmaChart.Known(0, 1, 0)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => EwmaChart.Known(0, 1, 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => EwmaChart.Known(0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => EwmaChart.Known(0, 1, 0.2, 7));
        Assert.Throws<ArgumentOutOfRangeException>(() => EwmaRunLength.Of(double.NaN, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => CusumChart.Of(0, -1, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => CusumChart.Of(0, 1, 100, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => FalseAlarms.OwnBaseline(2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => FalseAlarms.MovingRangeBaseline(2));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RunRule("half", 2, 4, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RunRule("long", 20, 30, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RunRule("inside", 3, 3, -1));
        Assert.Throws<ArgumentException>(() => RunRule.Together([]));
    }
}
