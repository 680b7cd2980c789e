using Analytics.Metrics.Strength;

namespace Analytics.Metrics.Tests.Strength;

public class PerceivedEffortTests
{
    // Zourdos et al. 2016: 10 is no repetition left, 9.5 none or one, 8 two.
    [Theory]
    [InlineData(10, 0)]
    [InlineData(9.5, 0.5)]
    [InlineData(8, 2)]
    [InlineData(1, 9)]
    public void ReserveFromRating_Rating_IsTenLessRating(double rating, double reserve)
    {
        Assert.Equal(reserve, PerceivedEffort.ReserveFromRating(rating));
        Assert.Equal(rating, PerceivedEffort.RatingFromReserve(reserve));
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(10.5)]
    [InlineData(double.NaN)]
    public void ReserveFromRating_OutOfRange_IsRefused(double rating)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => PerceivedEffort.ReserveFromRating(rating));

        Assert.Equal("rating", error.ParamName);
        Assert.Contains("1 to 10; got", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-0.5)]
    [InlineData(9.5)]
    [InlineData(double.NaN)]
    public void RatingFromReserve_OutOfRange_IsRefused(double reserve)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => PerceivedEffort.RatingFromReserve(reserve));

        Assert.Equal("reserve", error.ParamName);
        Assert.Contains("0 to 9; got", error.Message, StringComparison.Ordinal);
    }
}
