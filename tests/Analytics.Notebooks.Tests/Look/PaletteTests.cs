using System.Globalization;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Look;

public sealed class PaletteTests
{
    // WCAG 2.2, success criterion 1.4.3: text needs 4.5 to 1. Checked figures: black on white 21, #767676 on white 4.54.
    [Theory]
    [InlineData("#000000", "#ffffff", 21.0)]
    [InlineData("#767676", "#ffffff", 4.54)]
    public void Contrast_KnownPairs_MatchThePublishedRatios(string text, string ground, double expected)
        => Assert.Equal(expected, Contrast(text, ground), 0.01);

    [Theory]
    [InlineData(Palette.Ink, Palette.Paper)]
    [InlineData(Palette.Muted, Palette.Paper)]
    [InlineData(Palette.Muted, Palette.Band)]
    [InlineData(Palette.Blue, Palette.Paper)]
    [InlineData(Palette.OrangeText, Palette.Paper)]
    [InlineData(Palette.Ink, Palette.Note)]
    [InlineData(Palette.Paper, Palette.Ink)]
    public void Text_OnItsGround_CanBeRead(string text, string ground) => Assert.InRange(Contrast(text, ground), 4.5, 21);

    // WCAG 2.2, success criterion 1.4.11: what must be seen to understand a chart needs 3 to 1.
    [Theory]
    [InlineData(Palette.Blue, Palette.Paper)]
    [InlineData(Palette.Blue, Palette.Band)]
    [InlineData(Palette.Orange, Palette.Paper)]
    [InlineData(Palette.Orange, Palette.Band)]
    [InlineData(Palette.Grey, Palette.Paper)]
    [InlineData(Palette.Grey, Palette.Band)]
    public void Mark_OnItsGround_CanBeSeen(string mark, string ground) => Assert.InRange(Contrast(mark, ground), 3, 21);

    [Fact]
    public void Series_FirstColours_AreThoseOfOkabeAndIto()
        // Okabe and Ito, Color Universal Design: blue 0,114,178; vermillion 213,94,0; reddish purple 204,121,167; sky blue 86,180,233.
        => Assert.Equal(["#0072B2", "#D55E00", "#1d232a", "#CC79A7", "#56B4E9"], Palette.Series);

    [Fact]
    public void Css_Colours_AreThoseOfThePalette()
        => Assert.All(
            [Palette.Ink, Palette.Muted, Palette.Rule, Palette.Blue, Palette.Orange, Palette.OrangeText, Palette.Grey, Palette.Band, Palette.Note, .. Palette.Series],
            colour => Assert.Contains(colour, Sheet.Css, StringComparison.OrdinalIgnoreCase));

    private static double Contrast(string a, string b)
    {
        var (x, y) = (Luminance(a), Luminance(b));
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    // Relative luminance of WCAG 2.2.
    private static double Luminance(string colour)
    {
        double Channel(int at)
        {
            var share = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
        }
        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
    }
}
