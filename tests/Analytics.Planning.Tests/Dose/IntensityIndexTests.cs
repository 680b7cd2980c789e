using Analytics.Planning.Dose;

namespace Analytics.Planning.Tests.Dose;

public sealed class IntensityIndexTests
{
    // 5 repetitions at 75 % make 0.2 in print [hristov2005].
    [Fact]
    public void PrintedExample() => Assert.Equal(0.2, IntensityIndex.OfSet(5, 75)!.Value, 12);

    // 3 / 15 = 0.2 a set, three sets 0.6 (own arithmetic).
    [Fact]
    public void ThreeTriplesAt85() => Assert.Equal(0.6, IntensityIndex.Of(3, [85, 85, 85])!.Value, 12);

    [Fact]
    public void AtTheMaximum_IsNotDefined()
    {
        Assert.Null(IntensityIndex.OfSet(1, 100));
        Assert.Null(IntensityIndex.OfSet(1, 105));
        Assert.Null(IntensityIndex.Of(1, [95, 100]));
    }

    [Fact]
    public void NoSets_IsNothing() => Assert.Equal(0, IntensityIndex.Of(3, []));
}
