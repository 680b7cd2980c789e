using Analytics.Runner.Proofs;

namespace Analytics.Runner.Tests.Proofs;

public class ContentReaderTests
{
    [Fact]
    public void Read_Table_HasCaptionHeadsWithUnitsAndCellsWithNotes()
    {
        var table = Assert.IsType<PageTable>(Assert.Single(ContentReader.Read(
            "<table class=\"dt\"><caption>Strength &amp; power</caption><thead><tr><th scope=\"col\">Player</th><th scope=\"col\">Squat <small>lb</small></th></tr></thead>"
            + "<tbody><tr><th scope=\"row\">A <small>OT</small></th><td>420<small>+26</small></td></tr><tr><th>B</th><td></td></tr></tbody></table>")));
        Assert.Equal("Strength & power", table.Caption);
        Assert.Equal(["Player", "Squat lb"], table.Heads);
        Assert.Equal([["A OT", "420 +26"], ["B", ""]], table.Rows);
    }

    [Fact]
    public void Read_TableWithoutCaption_GoesByTheTitleOfItsFigure()
    {
        var items = ContentReader.Read("<figure><figcaption>Squat <small>kg</small></figcaption><table><tr><th>a</th></tr><tr><td>1</td></tr></table></figure><table><tr><td>2</td></tr></table>");
        Assert.Equal(new PageHeading("Squat kg"), items[0]);
        Assert.Equal(["Squat kg", ""], items.OfType<PageTable>().Select(t => t.Caption));
    }

    [Fact]
    public void Read_Text_IsALineEachWithOrdinarySpacesFoldedOnly()
        => Assert.Equal(
            [new PageHeading("Who"), new PageLine("+7\u202Flb (a\u00A0to\u00A0b)"), new PageLine("one two"), new PageLine("< 3")],
            ContentReader.Read("<h2>Who</h2><p>+7\u202Flb  (a\u00A0to\u00A0b)</p><ul><li><b>one</b><span>two</span></li></ul>\n<div>&lt; 3</div>"));

    [Fact]
    public void Read_WordsOfDrawings_StandApart()
        => Assert.Equal(
            [new PageDrawing("40"), new PageDrawing("a title"), new PageLine("before after")],
            ContentReader.Read("before <svg><text x=\"1\">40</text><title>a title</title></svg> after"));

    [Fact]
    public void Read_ScriptsStylesAndComments_AreNoText()
        => Assert.Equal([new PageLine("a b")], ContentReader.Read("a<script>if (1 < 2) { \"</p>\" }</script><style>.x{}</style><!-- <p>no</p> -->b".Replace(">b", "> b", StringComparison.Ordinal)));

    [Theory]
    [InlineData("<")]
    [InlineData("<p")]
    [InlineData("<!--")]
    [InlineData("<script>")]
    [InlineData("<td>1</td></table></svg><table><table><tr><td>")]
    [InlineData("<a href=\"x>")]
    public void Read_BrokenMarkup_IsReadAsFarAsItGoes(string html) => Assert.NotNull(ContentReader.Read(html + html));
}
