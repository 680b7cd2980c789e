using Analytics.Notebooks.Tables;
using Microsoft.Data.Analysis;

namespace Analytics.Notebooks.Tests.Tables;

public sealed class DataFrameTableTests
{
    private static DataFrame Frame() => new(
        new StringDataFrameColumn("name", ["Aldous", null!, "<b>"]),
        new DoubleDataFrameColumn("time", [1.5, null, 1.725]),
        new Int32DataFrameColumn("reps", [3, 5, null]),
        new BooleanDataFrameColumn("tested", [true, false, null]),
        new DateTimeDataFrameColumn("day", [new DateTime(2026, 6, 8), new DateTime(2026, 6, 8, 9, 30, 0), null]));

    [Fact]
    public void Of_Frame_ShowsEveryTypePlainly()
        => Assert.Equal(
            "3 rows, 5 columns\n\n" +
            "name     time  reps  tested  day\n" +
            "------------------------------------------------\n" +
            "Aldous  1.500     3  yes     2026-06-08\n" +
            "\u2013           \u2013     5  no      2026-06-08 09:30:00\n" +
            "<b>     1.725     \u2013  \u2013       \u2013",
            DataFrameTable.Of(Frame()).ToText());

    [Fact]
    public void Of_LongFrame_IsCappedAndCounted()
    {
        var table = DataFrameTable.Of(new DataFrame(new DoubleDataFrameColumn("x", Enumerable.Range(0, 1000).Select(i => (double)i))));
        Assert.Equal(50, table.Rows.Count);
        Assert.Contains("50 of 1000 rows shown.", table.ToHtml(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NoColumns_SaysSo() => Assert.Contains("0 rows, 0 columns", DataFrameTable.Of(new DataFrame()).ToText(), StringComparison.Ordinal);

    [Fact]
    public void Of_ManyDecimals_AreCutAtFour()
        => Assert.EndsWith("0.3333", DataFrameTable.Of(new DataFrame(new DoubleDataFrameColumn("x", [1.0 / 3]))).ToText(), StringComparison.Ordinal);
}
