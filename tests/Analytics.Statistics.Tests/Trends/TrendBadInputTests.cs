using Analytics.Statistics.Trends;

namespace Analytics.Statistics.Tests.Trends;

public sealed class TrendBadInputTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Values_that_are_not_finite_are_refused(double bad)
    {
        Assert.Contains("y[1]", Assert.Throws<ArgumentException>(() => MannKendall.Of([1, bad, 3])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => TheilSen.Of([1, bad, 3]));
        Assert.Throws<ArgumentException>(() => TheilSen.Of([1, bad, 3], [1, 2, 3]));
        Assert.Throws<ArgumentException>(() => LeastSquaresTrend.Of([1, 2, 3], [1, bad, 3]));
        Assert.Throws<ArgumentException>(() => RepeatedMedians.Of([1, 2, 3], [1, bad, 3]));
    }

    [Fact]
    public void Too_little_is_refused()
    {
        Assert.Throws<ArgumentException>(() => MannKendall.Of([1, 2]));
        Assert.Throws<ArgumentException>(() => TheilSen.Of([1]));
        Assert.Throws<ArgumentException>(() => LeastSquaresTrend.Of([1, 2], [1, 3]));
        Assert.Contains("3 values but y holds 4", Assert.Throws<ArgumentException>(() => LeastSquaresTrend.Of([1, 2, 3], [1, 2, 3, 4])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => TheilSen.Of([1, 2, 3], level: 1.2));
    }

    [Fact]
    public void Equal_times_have_no_slope()
    {
        Assert.Contains("All 3 values of x", Assert.Throws<ArgumentException>(() => TheilSen.Of([2, 2, 2], [1, 2, 3])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => LeastSquaresTrend.Of([2, 2, 2], [1, 2, 3]));
        Assert.Throws<ArgumentException>(() => RepeatedMedians.Of([2, 2], [1, 2]));
    }

    [Fact]
    public void Equal_values_have_no_trend_to_test_but_a_slope_of_0()
    {
        Assert.Contains("differ", Assert.Throws<ArgumentException>(() => MannKendall.Of([5, 5, 5, 5])).Message, StringComparison.Ordinal);
        var line = LeastSquaresTrend.Of([1, 2, 3], [5, 5, 5]);
        Assert.Equal(0, line.Line.Slope);
        Assert.Null(line.Line.P);
        Assert.Null(line.Line.RSquared);
        Assert.Null(line.DurbinWatson);
        Assert.Equal(0, TheilSen.Of([5.0, 5, 5, 5]).Slope);
    }

    [Fact]
    public void Few_points_have_no_interval_and_say_so()
    {
        var sen = TheilSen.Of([1.0, 2, 4]);
        Assert.Null(sen.Interval);
        Assert.Contains("too few slopes", sen.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Times_lost_to_rounding_are_refused()
        => Assert.Contains("too little for double precision", Assert.Throws<ArgumentException>(
            () => LeastSquaresTrend.Of([1e15, 1e15 + 1, 1e15 + 2], [1, 2, 3])).Message, StringComparison.Ordinal);
}
