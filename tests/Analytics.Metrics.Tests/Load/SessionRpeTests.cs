using Analytics.Metrics.Load;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Load;

public class SessionRpeTests
{
    // 7 × 60 = 420: the definition, Foster et al. 2001.
    [Theory]
    [InlineData(7, 60, 420)]
    [InlineData(0, 45, 0)]
    [InlineData(6.5, 50, 325)]
    public void Load_RatingTimesMinutes(double rating, double minutes, double load)
        => Assert.Equal(load, SessionRpe.Load(rating, Duration.FromMinutes(minutes))!.Value, 9);

    [Fact]
    public void Load_SomethingMissing_IsNotKnownRatherThanZero()
    {
        Assert.Null(SessionRpe.Load(null, Duration.FromMinutes(60)));
        Assert.Null(SessionRpe.Load(7, null));
        Assert.Null(new SessionWork(new(2026, 3, 2)).LoadAu);
    }

    [Theory]
    [InlineData(-0.5)]
    [InlineData(10.5)]
    [InlineData(double.NaN)]
    public void Load_RatingOffTheScale_IsRefused(double rating)
        => Assert.Contains("allowed: 0 to 10", Assert.Throws<ArgumentOutOfRangeException>(() => SessionRpe.Load(rating, Duration.FromMinutes(60))).Message, StringComparison.Ordinal);

    [Fact]
    public void Load_NegativeLength_IsRefused()
        => Assert.Throws<ArgumentOutOfRangeException>(() => SessionRpe.Load(5, Duration.FromMinutes(-1)));

    // Words of the scale as Foster et al. 2001 give them.
    [Fact]
    public void Anchors_AreThePublishedWords()
        => Assert.Equal(
            ["0 rest", "1 very, very easy", "2 easy", "3 moderate", "4 somewhat hard", "5 hard", "7 very hard", "10 maximal"],
            SessionRpe.Anchors.Select(a => $"{a.Rating} {a.Words}"));
}
