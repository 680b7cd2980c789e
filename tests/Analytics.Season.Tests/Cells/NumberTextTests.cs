using Analytics.Season.Cells;

namespace Analytics.Season.Tests.Cells;

public sealed class NumberTextTests
{
    [Theory]
    [InlineData("12", 12, null)]
    [InlineData(" 12.50 ", 12.5, null)]
    [InlineData("-0.5", -0.5, null)]
    [InlineData("1e3", 1000, null)]
    [InlineData("12,5", 12.5, null)]
    [InlineData("0,985", 0.985, null)]
    [InlineData("-1,25", -1.25, null)]
    [InlineData("1,234", 1.234, 1234.0)]
    [InlineData("1,234,567", 1234567, null)]
    [InlineData("1,234.5", 1234.5, null)]
    [InlineData("1.234,5", 1234.5, null)]
    [InlineData("1.234.567,5", 1234567.5, null)]
    [InlineData("1.234", 1.234, null)]
    [InlineData("1 234", 1234, null)]
    [InlineData("1\u00a0234,5", 1234.5, null)]
    [InlineData("1'234.5", 1234.5, null)]
    public void Read_NumberOfASpreadsheet_GivesItsReadings(string cell, double value, double? other)
        => Assert.Equal(new NumberReading(value, other), NumberText.Read(cell));

    [Theory]
    [InlineData("")]
    [InlineData("x")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e999")]
    [InlineData("1,23,456")]
    [InlineData("12,34,5")]
    [InlineData("1.2.3")]
    [InlineData("1,2.3,4")]
    [InlineData("12 34")]
    [InlineData("1..2")]
    [InlineData("--1")]
    [InlineData(",")]
    [InlineData("5'")]
    [InlineData("0x10")]
    [InlineData("½")]
    [InlineData("٣")]
    public void Read_AnythingElse_IsNull(string cell) => Assert.Null(NumberText.Read(cell));
}
