using Analytics.Statistics.Resampling;

namespace Analytics.Statistics.Tests.Resampling;

public sealed class BootstrapBadInputTests
{
    [Fact]
    public void Equal_values_have_no_interval_and_say_why()
    {
        foreach (var method in Enum.GetValues<BootstrapMethod>())
        {
            var interval = Bootstrap.Mean([7.3, 7.3, 7.3, 7.3]).Interval(method);
            Assert.Null(interval.Limits);
            Assert.Contains("do not vary", interval.Explanation, StringComparison.Ordinal);
            Assert.Contains("do not vary", interval.ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Resamples_on_one_side_have_no_bca_interval_but_percentiles()
    {
        var largest = Bootstrap.OfValues([1, 2, 3, 4, 9], Largest);
        // The largest value itself is drawn often: these resamples equal the estimate.
        Assert.Equal(0, largest.Statistics.Count - largest.Below - largest.Equal);
        var beyond = Bootstrap.FromResamples(3, rows => rows.Length == 3 ? 0 : rows[0] + 1, [[0, 1], [1, 2], [2, 2]]);
        Assert.Null(beyond.BiasCorrection);
        Assert.Contains("at or above", beyond.Interval().Explanation, StringComparison.Ordinal);
        Assert.Null(beyond.Interval().Limits);
        Assert.NotNull(beyond.Interval(BootstrapMethod.Percentile).Limits);
    }

    [Fact]
    public void A_statistic_that_often_does_not_exist_has_no_interval()
    {
        var r = Bootstrap.Correlation([1, 2, 3], [2, 1, 4], new() { Resamples = 2000 });
        // All three rows alike in one resample of nine.
        Assert.InRange(r.Undefined, 2000 / 9.0 - 60, 2000 / 9.0 + 60);
        Assert.Null(r.Interval(BootstrapMethod.Percentile).Limits);
        Assert.Contains("does not exist", r.Interval().Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void A_statistic_that_seldom_does_not_exist_is_counted()
    {
        var r = Bootstrap.Correlation([1, 2, 3, 4, 5], [2, 1, 4, 3, 6], new() { Resamples = 20_000 });
        Assert.InRange(r.Undefined, 10, 60); // 5 of 3125 expected: 32
        var interval = r.Interval(BootstrapMethod.Percentile);
        Assert.NotNull(interval.Limits);
        Assert.Contains("left out", interval.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void A_statistic_no_unit_moves_has_no_acceleration()
    {
        var flat = Bootstrap.FromResamples(4, rows => rows.Length == 2 ? rows[0] - 1 : 0, [[0, 0], [1, 1], [2, 2]]);
        Assert.Null(flat.AccelerationBy(Acceleration.CentredJackknife));
        Assert.Contains("no acceleration", flat.Interval().Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void A_limit_on_few_resamples_is_said_to_be_noisy()
        => Assert.Contains("outermost 3 of 100", Bootstrap.Mean([1, 2, 3, 5, 4], new() { Resamples = 100 }).Interval(BootstrapMethod.Percentile).Explanation, StringComparison.Ordinal);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Values_that_are_not_finite_are_refused(double bad)
    {
        Assert.Contains("values[1]", Assert.Throws<ArgumentException>(() => Bootstrap.Mean([1, bad, 2])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Bootstrap.OfValues([1, bad, 2], Largest));
        Assert.Throws<ArgumentException>(() => Bootstrap.Correlation([1, bad, 2], [1, 2, 3]));
        Assert.Throws<ArgumentException>(() => Bootstrap.OfRows(3, _ => bad));
    }

    [Fact]
    public void Too_little_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Bootstrap.Mean([1]));
        Assert.Throws<ArgumentException>(() => Bootstrap.Mean([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bootstrap.OfRows(1, _ => 0));
        Assert.Throws<ArgumentException>(() => Bootstrap.Correlation([1, 1, 1], [1, 2, 3]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bootstrap.Mean([1, 2], new() { Resamples = 99 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bootstrap.Mean([1, 2], new() { Threads = 0 }));
        Assert.Throws<ArgumentException>(() => Bootstrap.FromResamples(2, _ => 0, [[0, 1], [0, 2]]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bootstrap.Mean([1, 2]).Interval(level: 1));
    }

    [Fact]
    public void An_influence_nobody_knows_is_refused()
        => Assert.Throws<NotSupportedException>(() => Bootstrap.OfValues([1, 2, 4], Largest).Interval(acceleration: Acceleration.ExactInfluence));

    private static double Largest(Span<double> sample)
    {
        var most = double.NegativeInfinity;
        foreach (var value in sample) most = Math.Max(most, value);
        return most;
    }
}
