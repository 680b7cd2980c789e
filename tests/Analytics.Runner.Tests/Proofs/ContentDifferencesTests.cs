using Analytics.Runner.Proofs;

namespace Analytics.Runner.Tests.Proofs;

public class ContentDifferencesTests
{
    private static readonly PageTable Table = new("T", ["Player", "Squat lb"], [["A", "420"], ["B", "430"], ["B", "440"]]);

    [Fact]
    public void Between_TheSame_IsNothing() => Assert.Empty(ContentDifferences.Between([new PageHeading("H"), Table], [new PageHeading("H"), Table with { Rows = [["A", "420"], ["B", "430"], ["B", "440"]] }]));

    [Fact]
    public void Between_OneCell_HasTableRowAndColumn()
        => Assert.Equal([new Difference("table 'T', row 'B', column 'Squat lb'", "440", "441") { Row = "B", Column = "Squat lb" }], With(["A", "420"], ["B", "430"], ["B", "441"]));

    [Fact]
    public void Between_RowsInAnotherOrder_AreComparedByName()
        => Assert.Equal([new Difference("table 'T', row 'A', column 'Squat lb'", "420", "425") { Row = "A", Column = "Squat lb" }], With(["B", "430"], ["B", "440"], ["A", "425"]));

    [Fact]
    public void Between_RowAdded_IsToldOnce()
        => Assert.Equal([new Difference("table 'T', row 'C'", "", "C, 450")], With(["A", "420"], ["C", "450"], ["B", "430"], ["B", "440"]));

    [Fact]
    public void Between_RowNameChanged_StaysThatRow()
        => Assert.Equal([new Difference("table 'T', row 'Z', column 'Player'", "A", "Z") { Row = "Z", Column = "Player" }], With(["Z", "420"], ["B", "430"], ["B", "440"]));

    [Fact]
    public void Between_LongLines_ShowsWhatSurroundsTheDifference()
    {
        var many = string.Concat(Enumerable.Repeat("word ", 40));
        var difference = Assert.Single(ContentDifferences.Between([new PageLine(many + "+7 lb " + many)], [new PageLine(many + "+8 lb " + many)], "Squat"));
        Assert.Equal("text under 'Squat'", difference.Place);
        Assert.Matches("^…(word )+\\+7 lb( word)+…$", difference.Reported);
        Assert.Matches("^…(word )+\\+8 lb( word)+…$", difference.Expected);
        Assert.True(difference.Reported.Length < 160);
    }

    [Fact]
    public void Between_LineAdded_ComparesTheOthersAsTheyAre()
        => Assert.Equal([new Difference("text under 'H'", "", "new")],
            ContentDifferences.Between([new PageHeading("H"), new PageLine("a"), new PageLine("b")], [new PageHeading("H"), new PageLine("a"), new PageLine("new"), new PageLine("b")]));

    [Fact]
    public void Between_HeadingChanged_KeepsWhatStandsUnderItTogether()
        => Assert.Equal([new Difference("heading", "H", "I")], ContentDifferences.Between([new PageHeading("H"), Table], [new PageHeading("I"), Table]));

    private static IEnumerable<Difference> With(params string[][] rows) => ContentDifferences.Between([Table], [Table with { Rows = rows }]);
}
