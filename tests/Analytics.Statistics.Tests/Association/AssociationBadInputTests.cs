using Analytics.Statistics.Association;

namespace Analytics.Statistics.Tests.Association;

public sealed class AssociationBadInputTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Values_that_are_not_finite_are_refused(double bad)
    {
        foreach (var way in new Func<double[], double[], Correlation>[] { (x, y) => Correlation.Pearson(x, y), (x, y) => Correlation.Spearman(x, y), (x, y) => Correlation.Kendall(x, y) })
        {
            Assert.Contains("x[2]", Assert.Throws<ArgumentException>(() => way([1, 2, bad], [1, 2, 3])).Message, StringComparison.Ordinal);
            Assert.Contains("y[0]", Assert.Throws<ArgumentException>(() => way([1, 2, 3], [bad, 2, 3])).Message, StringComparison.Ordinal);
            Assert.Throws<ArgumentException>(() => way([1], [2]));
            Assert.Throws<ArgumentException>(() => way([1, 2, 3], [1, 2]));
            Assert.Contains("All 3 values of y", Assert.Throws<ArgumentException>(() => way([1, 2, 3], [4, 4, 4])).Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Two_and_three_pairs_have_no_interval_and_say_so()
    {
        var two = Correlation.Pearson([1, 2], [3, 5]);
        Assert.Null(two.P);
        Assert.Null(two.Interval);
        var three = Correlation.Pearson([1, 2, 3], [3, 5, 4]);
        Assert.NotNull(three.P);
        Assert.Null(three.Interval);
        Assert.Contains("at least 4", three.ToString(), StringComparison.Ordinal);
        Assert.Null(Correlation.Kendall([1, 2, 3, 4], [3, 5, 4, 6]).Interval);
    }

    [Fact]
    public void Pairs_exactly_in_line_have_no_interval()
    {
        var exact = Correlation.Pearson([1, 2, 3, 4, 5], [2, 4, 6, 8, 10]);
        Assert.Equal(1, exact.Value);
        Assert.Null(exact.Interval);
        Assert.Null(Correlation.Spearman([1, 2, 3, 4, 5], [2, 4, 6, 8, 100]).Interval);
    }

    [Fact]
    public void Variances_belong_to_their_correlation()
    {
        Assert.Throws<ArgumentException>(() => FisherInterval.Of(0.5, 20, 0.95, CorrelationKind.Pearson, CorrelationVariance.Fieller));
        Assert.Throws<ArgumentException>(() => Correlation.Spearman([1, 2, 3, 4], [1, 3, 2, 4], 0.95, CorrelationVariance.Fisher));
        Assert.Throws<ArgumentOutOfRangeException>(() => FisherInterval.Of(1.01, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => FisherInterval.Of(double.NaN, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => FisherInterval.Of(0.2, 20, 0));
    }

    [Fact]
    public void A_corrected_correlation_above_1_is_shown_and_explained()
    {
        var over = Attenuation.Of(0.38, 0.25, 0.55);
        Assert.True(over.IsImpossible);
        Assert.Contains("1.025", over.ToString(), StringComparison.Ordinal);
        Assert.Contains("beyond 1", over.ToString(), StringComparison.Ordinal);
        Assert.False(Attenuation.Of(0.42, 0.8, 0.7).IsImpossible);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.2)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void Reliabilities_outside_their_range_are_refused(double bad)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Attenuation.Of(0.3, bad, 0.8));
        Assert.Throws<ArgumentOutOfRangeException>(() => Attenuation.Expected(0.3, 0.8, bad));
        Assert.Throws<ArgumentOutOfRangeException>(() => Attenuation.CorrectedSlope(0.3, bad));
    }
}
