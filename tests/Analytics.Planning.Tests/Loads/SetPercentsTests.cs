using Analytics.Metrics.Strength;
using Analytics.Planning.Loads;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Tests.Loads;

/// <summary>Per cent set by set. Figures of tables are typed from the tables: textbook [baechle2008], coaches' chart [tuchscherer2008], weight-room chart (common practice, no source).</summary>
public sealed class SetPercentsTests
{
    [Fact]
    public void Straight_IsTheSameInEverySet() => Assert.Equal([75, 75, 75], Of(Made.Sets(3, 5, 75)).Percent);

    [Fact]
    public void Ramp_GoesUpEvenlyToTheTopSet() => Assert.Equal([60, 66.25, 72.5, 78.75, 85], Of(Made.Ramp(5, 3, 60, 85)).Percent);

    [Fact]
    public void Ramp_OfOneSet_IsTheTopSet() => Assert.Equal([85], Of(Made.Ramp(1, 3, 60, 85)).Percent);

    [Fact]
    public void Ramp_WithOneFigure_Stays() => Assert.Equal([80, 80], Of(Made.Ramp(2, 3, 0, 80) with { LeastPercent = null }).Percent);

    // Thirds of 7.7 leave 69.99999999999999 in binary: 62.3 + 2 × 3.85.
    [Fact]
    public void Ramp_MeetsTheEdgeOfAZone() => Assert.Equal([62.3, 66.15, 70], Of(Made.Ramp(3, 3, 62.3, 70)).Percent);

    [Theory]
    [InlineData(5, 3, 80)] // 8 to failure
    [InlineData(8, 2, 75)] // 10
    [InlineData(3, 1, 90)] // 4
    [InlineData(1, 0, 100)]
    public void Reserve_TakesTheTextbooksRow(int repetitions, double reserve, double expected)
    {
        var percents = Of(Made.Sets(2, repetitions, reserve: reserve));
        Assert.Equal([expected, expected], percents.Percent);
        Assert.Contains("textbook table", Assert.Single(percents.Notes), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(10, 3, "prints 15 and not 13")]
    [InlineData(12, 2, "prints 15 and not 14")]
    public void Reserve_WithoutARow_TakesTheNextLowerIntensityPrinted(int repetitions, double reserve, string said)
    {
        var percents = Of(Made.Sets(1, repetitions, reserve: reserve));
        Assert.Equal([65], percents.Percent);
        Assert.Contains(said, percents.Notes[0], StringComparison.Ordinal);
    }

    // Half a repetition in reserve: 6.5 to failure takes 7, 83 %.
    [Fact]
    public void Reserve_BetweenTwoRows_TakesTheLowerIntensity() => Assert.Equal([83], Of(Made.Sets(1, 5, reserve: 1.5)).Percent);

    [Fact]
    public void Reserve_BeyondTheTable_IsSaid()
    {
        var percents = Of(Made.Sets(3, 15, reserve: 2));
        Assert.Empty(percents.Percent);
        Assert.Equal("17 repetitions to failure are beyond the textbook table, which ends at 15", Assert.Single(percents.Notes));
    }

    // The printed tables differ: 8 repetitions with 225 lb are 281.25 lb by the textbook's 80 % and 288.46 lb by the weight-room chart's 78 %; 12 are 67 % in one, 70 % in its copy.
    [Fact]
    public void Tables_AreNotMixed()
    {
        var eight = Made.Sets(1, 8, reserve: 0);
        Assert.Equal(281.25, 225 / SetPercents.Of(eight, RepetitionTables.Textbook).Percent[0] * 100, 9);
        Assert.Equal(288.46, 225 / SetPercents.Of(eight, RepetitionTables.WeightRoom).Percent[0] * 100, 2);
        var twelve = Made.Sets(1, 12, reserve: 0);
        Assert.Equal(67, SetPercents.Of(twelve, RepetitionTables.Textbook).Percent[0]);
        Assert.Equal(70, SetPercents.Of(twelve, RepetitionTables.TextbookCopy).Percent[0]);
    }

    // 5 at a rating of 8 leaves 2: 7 to failure, 81.1 % by the chart [tuchscherer2008], 83 % by the textbook.
    [Fact]
    public void RatedEffort_HasItsOwnChart()
    {
        var rated = Made.Sets(1, 5, reserve: PerceivedEffort.ReserveFromRating(8));
        Assert.Equal(81.1, SetPercents.Of(rated, RepetitionTables.RatedEffort).Percent[0]);
        Assert.Equal(83, SetPercents.Of(rated, RepetitionTables.Textbook).Percent[0]);
    }

    [Fact]
    public void NeitherPerCentNorReserve_IsNone() => Assert.Empty(Of(Made.Sets(3, 5)).Percent);

    [Fact]
    public void PerCent_GoesBeforeReserve() => Assert.Equal([70], Of(Made.Sets(1, 5, 70, reserve: 1)).Percent);

    [Fact]
    public void Within_ClampsAndSaysSo()
    {
        var narrow = Made.Clean with { LeastPercent = 65, MostPercent = 80 };
        var percents = Of(Made.Ramp(3, 3, 60, 90)).Within(narrow);
        Assert.Equal([65, 75, 80], percents.Percent);
        Assert.Equal(["90 % brought down to 80 %, the heaviest use of this exercise", "60 % brought up to 65 %, the lightest use of this exercise"], percents.Notes);
        Assert.Empty(Of(Made.Sets(3, 3, 80)).Within(narrow).Notes);
    }

    private static SetPercents Of(SetScheme scheme) => SetPercents.Of(scheme, RepetitionTables.Textbook);
}
