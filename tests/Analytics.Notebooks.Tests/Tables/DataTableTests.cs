using System.Xml.Linq;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Statistics;

namespace Analytics.Notebooks.Tests.Tables;

public sealed class DataTableTests
{
    private static readonly (string Name, double? Squat, double? Change)[] Rows = [("Aldous", 182.4, 7.6), ("Brannock", null, null), ("Castell", 99.96, -0.04)];

    private static DataTable Squats(int? cap = null)
        => DataTable.Of("Strength", Rows, t => t.Text("Player", r => r.Name).Number("Back squat", "kg", 1, r => r.Squat).Change("Change", "kg", 1, r => r.Change), cap);

    private static XElement Table(DataTable table) => XElement.Parse("<x>" + table.ToHtml() + "</x>").Descendants("table").Single();

    [Fact]
    public void ToHtml_Table_HasCaptionScopesAndUnits()
    {
        var table = Table(Squats());

        Assert.Equal("Strength", table.Element("caption")!.Value);
        Assert.Equal(["Player", "Back squat kg", "Change kg"], table.Element("thead")!.Descendants("th").Select(t => t.Value));
        Assert.All(table.Element("thead")!.Descendants("th"), t => Assert.Equal("col", t.Attribute("scope")!.Value));
        Assert.Equal(["Aldous", "Brannock", "Castell"], table.Element("tbody")!.Elements("tr").Select(r => r.Element("th")!.Value));
        Assert.All(table.Element("tbody")!.Descendants("th"), t => Assert.Equal("row", t.Attribute("scope")!.Value));
        Assert.Equal("dt few n2 n3", table.Attribute("class")!.Value);
    }

    [Fact]
    public void ToHtml_Numbers_ShareDecimalsAndMarkWhatIsMissing()
        => Assert.Equal(
            ["182.4", "+7.6", "\u2013", "\u2013", "100.0", "0.0"],
            Table(Squats()).Element("tbody")!.Descendants("td").Select(t => t.Value));

    [Fact]
    public void ToHtml_Cap_SaysHowManyRowsAreShown()
    {
        var html = Squats(cap: 2).ToHtml();

        Assert.Equal(2, Table(Squats(cap: 2)).Element("tbody")!.Elements("tr").Count());
        Assert.Contains("2 of 3 rows shown.", html, StringComparison.Ordinal);
        Assert.DoesNotContain("rows shown", Squats(cap: 3).ToHtml(), StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_NoRows_SaysSo()
        => Assert.Contains("No rows.", new DataTable("Empty", [new Column("Player")], []).ToHtml(), StringComparison.Ordinal);

    [Fact]
    public void ToHtml_CardLabels_CannotLeaveTheirString()
    {
        var table = Table(new DataTable("x", [new("Player"), new("a'b\"c;}</style>\\", false, "kg")], [["Aldous", "1"]]));

        Assert.Equal(@"--l2:'a\27 b\22 c\3b \7d \3c \2f style\3e \5c \2c  kg'", table.Attribute("style")!.Value);
    }

    [Fact]
    public void Estimate_WithAndWithoutInterval_SaysWhichDoubtIsKnown()
    {
        Estimate[] rows = [new(182, 3, new Interval(176, 188), 5, "mean"), new(170, null, null, 1, "single")];
        var cells = Table(DataTable.Of("x", rows, t => t.Text("Method", r => r.Method).Estimate("Squat", "kg", 0, r => r))).Element("tbody")!.Descendants("td").ToArray();

        Assert.Equal("182 (176\u00A0to\u00A0188)", cells[0].Value);
        Assert.Equal("no error known", cells[1].Element("small")!.Value);
    }

    [Fact]
    public void ToHtml_ToneAndNote_AreWordsInColour()
    {
        var cell = Table(new DataTable("x", [new("Player"), new("Why")], [["Garrow", new Cell("clear loss", "check health first", Tone.Loss)]])).Descendants("td").Single();

        Assert.Equal("loss-t", cell.Attribute("class")!.Value);
        Assert.Equal("check health first", cell.Element("small")!.Value);
    }

    [Fact]
    public void ToHtml_LongWord_MayBreakAndOthersMayNot()
    {
        var cells = Table(new DataTable("x", [new("Player"), new("A"), new("B")], [["Aldous", "short", "Llanfairpwllgwyngyllgogerych"]])).Descendants("td").ToArray();
        Assert.Null(cells[0].Attribute("class"));
        Assert.Equal("lg", cells[1].Attribute("class")!.Value);
    }

    [Fact]
    public void ToText_Table_AlignsColumns()
        => Assert.Equal(
            "Strength\n\n" +
            "Player    Back squat, kg  Change, kg\n" +
            "------------------------------------\n" +
            "Aldous             182.4        +7.6\n" +
            "Brannock               \u2013           \u2013\n" +
            "Castell            100.0         0.0",
            Squats().ToText());

    [Fact]
    public void New_RowOfWrongLength_NamesRowAndCounts()
    {
        var error = Assert.Throws<ArgumentException>(() => new DataTable("x", [new("A"), new("B")], [["1", "2"], ["1"]]));
        Assert.Equal("rows", error.ParamName);
        Assert.Contains("Row 2 has 1 cells, the table has 2 columns.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void New_CapBelowOne_IsRefused()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Squats(cap: 0));
        Assert.Equal("cap", error.ParamName);
    }

    [Fact]
    public void New_NoColumns_IsRefused() => Assert.Equal("columns", Assert.Throws<ArgumentException>(() => new DataTable("x", [], [])).ParamName);
}
