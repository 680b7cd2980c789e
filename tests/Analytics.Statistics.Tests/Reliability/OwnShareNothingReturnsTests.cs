using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

/// <summary>A test of which nothing returns has no share, and says so instead of failing.</summary>
public class OwnShareNothingReturnsTests
{
    private static readonly double[] s_up = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

    // The order of the first day turned round: the covariance of the two days is below 0.
    private static readonly double[] s_down = [10, 9, 8, 7, 6, 5, 4, 3, 2, 1];

    private static readonly OccasionPair s_other = new([2, 1, 4, 3, 6, 5, 8, 7, 10, 9], [1, 2, 4, 3, 5, 6, 8, 7, 9, 10]);

    [Fact]
    public void Of_NothingReturns_HasNoShareAndNoInterval()
    {
        var own = OwnShare.Of(new(s_up, s_down), [s_other]);
        Assert.Null(own.Value);
        Assert.Null(own.Interval);
        Assert.Equal(0, own.Returns);
        Assert.Equal(10, own.LeaveOneOut.Count);
        Assert.All(own.LeaveOneOut, Assert.Null);
        Assert.Contains("nothing of the test itself returns", own.Sheet().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_EverythingReturns_ReturnsInEveryResample()
    {
        var own = OwnShare.Of(new(s_up, s_up), [s_other]);
        Assert.Equal(1, own.Returns);
        Assert.NotNull(own.Interval);
    }
}
