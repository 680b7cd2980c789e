using Analytics.Metrics.Strength;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Strength;

/// <summary>Printed tables: every cell is typed here again from the same source, so a slip on either side shows.</summary>
public class RepetitionTablesTests
{
    // Essentials of Strength Training and Conditioning, load assignment; 11, 12 and 15 from memory.
    [Theory]
    [InlineData(1, 100)]
    [InlineData(2, 95)]
    [InlineData(3, 93)]
    [InlineData(4, 90)]
    [InlineData(5, 87)]
    [InlineData(6, 85)]
    [InlineData(7, 83)]
    [InlineData(8, 80)]
    [InlineData(9, 77)]
    [InlineData(10, 75)]
    [InlineData(11, 70)]
    [InlineData(12, 67)]
    [InlineData(15, 65)]
    public void Textbook_PrintedRow_IsThere(double repetitions, double percent) => Assert.Equal(percent, RepetitionTables.Textbook.PercentAt(repetitions));

    [Theory]
    [InlineData(13)]
    [InlineData(14)]
    [InlineData(16)]
    [InlineData(4.5)]
    [InlineData(0)]
    public void Textbook_RowThatIsNotPrinted_IsNotFilledIn(double repetitions)
    {
        Assert.Null(RepetitionTables.Textbook.PercentAt(repetitions));
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => RepetitionTables.Textbook.Estimate(Mass.FromKilograms(100), repetitions));
        Assert.Equal("repetitions", error.ParamName);
        Assert.Contains(FormattableString.Invariant($"does not print {repetitions} repetitions"), error.Message, StringComparison.Ordinal);
        Assert.Contains("11, 12, 15", error.Message, StringComparison.Ordinal);
    }

    // 225 / 0.80 = 281.25 lb. Another printed chart gives 286 lb for the same set: a different table.
    [Fact]
    public void Textbook_225PoundsForEight_Is281Pounds()
        => Assert.Equal(281.25, RepetitionTables.Textbook.Estimate(Mass.FromPounds(225), 8).Pounds, 1e-9);

    [Fact]
    public void TextbookCopy_LastRows_DifferFromTheTextbook()
    {
        Assert.Equal(73, RepetitionTables.TextbookCopy.PercentAt(11));
        Assert.Equal(70, RepetitionTables.TextbookCopy.PercentAt(12));
        Assert.Null(RepetitionTables.TextbookCopy.PercentAt(15));
        Assert.Equal(RepetitionTables.Textbook.Rows.Take(10), RepetitionTables.TextbookCopy.Rows.Take(10));
    }

    // Common practice, no source.
    [Fact]
    public void WeightRoom_OneToTwelve_IsTheCommonChart()
        => Assert.Equal([100, 95, 90, 88, 86, 83, 80, 78, 76, 75, 72, 70], Enumerable.Range(1, 12).Select(r => RepetitionTables.WeightRoom.PercentAt(r)!.Value));

    // The chart of powerlifting practice, by repetitions + reserve.
    [Theory]
    [InlineData(5, 8, 81.1)]
    [InlineData(1, 9, 95.5)]
    [InlineData(3, 8.5, 87.8)]
    [InlineData(10, 6, 62.6)]
    [InlineData(1, 10, 100)]
    public void RatedEffort_RepetitionsAtARating_AreOneNumber(int repetitions, double rating, double percent)
        => Assert.Equal(percent, RepetitionTables.RatedEffort.PercentAt(repetitions + PerceivedEffort.ReserveFromRating(rating)));

    [Fact]
    public void RatedEffort_AllCells_AreTheChart()
        => Assert.Equal(
            [100, 97.8, 95.5, 93.9, 92.2, 90.7, 89.2, 87.8, 86.3, 85.0, 83.7, 82.4, 81.1, 79.9, 78.6,
             77.4, 76.2, 75.1, 73.9, 72.3, 70.7, 69.4, 68.0, 66.7, 65.3, 64.0, 62.6, 61.3, 60.0, 58.6, 57.4],
            Enumerable.Range(2, 31).Select(halves => RepetitionTables.RatedEffort.PercentAt(halves / 2.0)!.Value));

    // 140 kg for five at RPE 8: 140 / 0.811 = 172.626 kg.
    [Fact]
    public void RatedEffort_140KilogramsForFiveAtEight_Is172Kilograms()
        => Assert.Equal(172.626, RepetitionTables.RatedEffort.Estimate(Mass.FromKilograms(140), 7).Kilograms, 5e-4);

    [Fact]
    public void All_EveryTable_FallsWithRepetitions()
        => Assert.All(RepetitionTables.All, table => Assert.All(
            table.Rows.Zip(table.Rows.Skip(1)),
            pair => Assert.True(pair.First.Repetitions < pair.Second.Repetitions && pair.First.Percent > pair.Second.Percent)));
}
