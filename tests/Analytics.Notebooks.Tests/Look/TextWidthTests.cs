using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Look;

public sealed class TextWidthTests
{
    // Widths at 100 pixels measured in Chromium 156 with canvas measureText in DejaVu Sans, the widest of the usual
    // system fonts. The estimate may be more, up to a third, and hardly less: 3 % is a quarter of a digit in ten.
    [Theory]
    [InlineData("0123456789", 636.2)]
    [InlineData("too small to matter", 963.4)]
    [InlineData("Linebacker", 545.1)]
    [InlineData("WWWWW", 494.4)]
    [InlineData("mmmmm", 487.1)]
    [InlineData("+18 kg (+9 to +27)", 996.4)]
    [InlineData("illicit Ijssel", 515.7)]
    [InlineData("\u00C5str\u00F6m-\u00D8g\u00E5rd", 699.6)]
    [InlineData("\u66F4\u65B0\u65E5", 300.0)]
    public void Of_Text_IsNotLessThanAWideFont(string text, double measured)
        => Assert.InRange(TextWidth.Of(text, 100), measured * 0.97, measured * 1.34);

    [Fact]
    public void Of_FontSize_Scales() => Assert.Equal(2 * TextWidth.Of("abc", 10), TextWidth.Of("abc", 20), 9);
}
