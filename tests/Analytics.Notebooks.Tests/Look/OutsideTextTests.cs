using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Look;

public sealed class OutsideTextTests
{
    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("  \t")]
    public void Label_Blank_SaysSo(string? text) => Assert.Equal("(no name)", OutsideText.Label(text));

    [Fact]
    public void Label_Monster_IsCutWithAnEllipsis()
    {
        var label = OutsideText.Label(new string('x', 10_000_000));
        Assert.Equal(90, label.Length);
        Assert.EndsWith("x\u2026", label, StringComparison.Ordinal);
    }

    [Fact]
    public void Cut_CombinedCharacters_AreNotTornApart()
        // A family of four is one visible character of eleven UTF-16 units.
        => Assert.Equal("\U0001F468\u200D\U0001F469\u200D\U0001F467\u200D\U0001F466\u2026", OutsideText.Cut("\U0001F468\u200D\U0001F469\u200D\U0001F467\u200D\U0001F466xyz", 2));

    [Fact]
    public void Cut_ManyMarksOnOneLetter_IsBounded()
        => Assert.InRange(OutsideText.Cut("a" + new string('\u0301', 100_000), 20).Length, 1, 200);

    [Theory]
    [InlineData("short words only", false)]
    [InlineData("Llanfairpwllgwyngyllgogerych", true)]
    public void HasLongWord_Text_AsksWhetherAWordMustBreak(string text, bool expected) => Assert.Equal(expected, OutsideText.HasLongWord(text));
}
