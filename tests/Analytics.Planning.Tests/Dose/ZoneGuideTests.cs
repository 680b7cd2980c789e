using Analytics.Planning.Dose;

namespace Analytics.Planning.Tests.Dose;

/// <summary>The table of the Soviet logs as printed in its English copies [hristov2005].</summary>
public sealed class ZoneGuideTests
{
    [Theory]
    [InlineData(65, 3, 6, 24, 18, 30)]
    [InlineData(75, 3, 6, 18, 12, 24)]
    [InlineData(85, 2, 4, 15, 10, 20)]
    [InlineData(95, 1, 2, 7, 4, 10)]
    public void Rows_AreAsPrinted(double percent, int leastPerSet, int mostPerSet, int usual, int least, int most)
    {
        var zone = ZoneGuide.At(percent);
        Assert.Equal((leastPerSet, mostPerSet, usual, least, most), (zone.LeastPerSet, zone.MostPerSet, zone.Usual, zone.Least, zone.Most));
    }

    [Theory]
    [InlineData(69.9, "below 70 %")]
    [InlineData(70, "at 70 % to below 80 %")]
    [InlineData(79.9, "at 70 % to below 80 %")]
    [InlineData(80, "at 80 % to below 90 %")]
    [InlineData(90, "at 90 % and more")]
    [InlineData(110, "at 90 % and more")]
    public void Edges_BelongToTheUpperZone(double percent, string words) => Assert.Equal(words, ZoneGuide.At(percent).Words);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void NoIntensity_IsRefused(double percent) => Assert.Equal("percent", Assert.Throws<ArgumentOutOfRangeException>(() => ZoneGuide.At(percent)).ParamName);
}
