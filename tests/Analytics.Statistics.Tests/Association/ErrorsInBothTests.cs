using Analytics.Statistics.Association;

namespace Analytics.Statistics.Tests.Association;

public sealed class ErrorsInBothTests
{
    private static readonly double[] s_x = Oracle.Column("pearson-york.csv", 0);
    private static readonly double[] s_y = Oracle.Column("pearson-york.csv", 1);

    [Fact]
    public void Lambda_is_the_error_variance_of_y_over_that_of_x()
    {
        // All error in y: Deming becomes least squares of y on x. All in x: the inverse of x on y.
        Oracle.Close(-0.5395772749840415, ErrorsInBoth.Deming(s_x, s_y, 1e9).Slope, 1e-7);
        Oracle.Close(-0.5658889254025632, ErrorsInBoth.Deming(s_x, s_y, 1e-9).Slope, 1e-7);
        // Turned over: swapping the columns inverts slope and lambda.
        Oracle.Close(1 / ErrorsInBoth.Deming(s_x, s_y, 4).Slope, ErrorsInBoth.Deming(s_y, s_x, 0.25).Slope, 1e-12);
    }

    [Fact]
    public void Shift_scale_and_order_carry_over()
    {
        var plain = ErrorsInBoth.Deming(s_x, s_y, 2);
        // y in tenths: its error variance is a hundred times as large.
        var scaled = ErrorsInBoth.Deming([.. s_x.Reverse().Select(v => v + 500)], [.. s_y.Reverse().Select(v => 10 * v)], 200);
        Oracle.Close(10 * plain.Slope, scaled.Slope, 1e-10);
        Oracle.Close(10 * plain.SlopeError!.Value, scaled.SlopeError!.Value, 1e-8);
        Oracle.Close(10 * ErrorsInBoth.GeometricMean(s_x, s_y).Slope, ErrorsInBoth.GeometricMean(s_x, [.. s_y.Select(v => 10 * v)]).Slope, 1e-12);
    }

    [Fact]
    public void The_line_is_not_blurred_by_error_in_x()
    {
        // True slope 2, error SD 0.5 in x and 1 in y: least squares would give 2/(1 + 0.25/var x).
        var gauss = new Gaussian(31);
        double[] truth = [.. Enumerable.Range(0, 4000).Select(_ => gauss.Next())];
        double[] x = [.. truth.Select(v => v + 0.5 * gauss.Next())], y = [.. truth.Select(v => 1 + 2 * v + gauss.Next())];
        var line = ErrorsInBoth.Deming(x, y, 4);
        Assert.True(line.Interval!.Value.Contains(2));
        Assert.Equal(1.6, Analytics.Statistics.Trends.LeastSquaresTrend.Of(x, y).Line.Slope, 0.1);
    }

    [Fact]
    public void Equal_weights_in_york_are_deming()
    {
        double[] wx = [.. s_x.Select(_ => 4.0)], wy = [.. s_x.Select(_ => 2.0)];
        Oracle.Close(ErrorsInBoth.Deming(s_x, s_y, 2).Slope, YorkLine.Of(s_x, s_y, wx, wy).Slope, 1e-10);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(0)]
    [InlineData(-1)]
    public void Bad_lambda_and_weights_are_refused(double bad)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ErrorsInBoth.Deming(s_x, s_y, bad));
        double[] weights = [.. s_x.Select((_, i) => i == 3 ? bad : 1.0)];
        Assert.Contains("weightX[3]", Assert.Throws<ArgumentException>(() => YorkLine.Of(s_x, s_y, weights, s_x.Select(_ => 1.0).ToArray())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Degenerate_columns_are_refused_in_words()
    {
        Assert.Throws<ArgumentException>(() => ErrorsInBoth.Orthogonal([1, 2], [1, 2]));
        Assert.Contains("All 3 values of x", Assert.Throws<ArgumentException>(() => ErrorsInBoth.Orthogonal([1, 1, 1], [1, 2, 3])).Message, StringComparison.Ordinal);
        Assert.Contains("unrelated", Assert.Throws<ArgumentException>(() => ErrorsInBoth.Orthogonal([-1, 0, 1, 0], [0, 1, 0, -1])).Message, StringComparison.Ordinal);
        Assert.Contains("never differ", Assert.Throws<ArgumentException>(() => ErrorsInBoth.DemingOfMeans([1, 2, 3], [1, 2, 3], [1, 2, 3], [1, 2, 4])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Three_pairs_have_no_error_and_say_so()
    {
        var line = ErrorsInBoth.Orthogonal([1, 2, 4], [1, 2, 3.5]);
        Assert.Null(line.SlopeError);
        Assert.Null(line.Interval);
        Assert.Contains("No error", line.ToString(), StringComparison.Ordinal);
    }
}
