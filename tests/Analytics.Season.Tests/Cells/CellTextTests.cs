using Analytics.Season.Cells;

namespace Analytics.Season.Tests.Cells;

public sealed class CellTextTests
{
    [Theory]
    [InlineData("a\nb\tc", "a b c")]
    [InlineData("short", "short")]
    public void OneLine_Cell_IsOneLine(string cell, string shown) => Assert.Equal(shown, CellText.OneLine(cell));

    [Fact]
    public void OneLine_LongCell_IsCutAndSaysHowLongItWas()
        => Assert.Equal(new string('x', 59) + "… (1000 characters)", CellText.OneLine(new string('x', 1000)));

    [Theory]
    [InlineData(77.1617918, true, "77.2")]
    [InlineData(551.155655, false, "551")]
    [InlineData(1.96850394, true, "1.97")]
    [InlineData(51.1811024, false, "51.1")]
    [InlineData(30, false, "30")]
    [InlineData(0, true, "0")]
    public void Limit_IsRoundedIntoTheRange(double value, bool isLow, string shown) => Assert.Equal(shown, CellText.Limit(value, isLow));

    [Theory]
    [InlineData("back_sqaut", "back_squat")]
    [InlineData("bench_pres", "bench_press")]
    [InlineData("curl", null)]
    [InlineData("", null)]
    public void NearWord_Misspelling_FindsTheKnownWord(string word, string? near) => Assert.Equal(near, NearWord.Of(word, ["back_squat", "bench_press", "clean"]));

    [Theory]
    [InlineData("2026-03-02", false, "2026-03-02")]
    [InlineData("2026-03-02T00:00:00", false, "2026-03-02")]
    [InlineData("46083", true, "2026-03-02")]
    [InlineData("46083", false, null)]
    [InlineData("60", true, null)]
    [InlineData("02/03/2026", true, null)]
    [InlineData("2026-02-30", true, null)]
    public void DateText_IsoOrDayCount_IsRead(string cell, bool serial, string? iso) => Assert.Equal(iso, DateText.Read(cell, serial) is { } date ? DateText.Iso(date) : null);
}
