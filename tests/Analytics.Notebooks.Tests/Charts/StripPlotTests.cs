using System.Xml.Linq;
using Analytics.Notebooks.Charts;

namespace Analytics.Notebooks.Tests.Charts;

public sealed class StripPlotTests
{
    private static StripPanel Panel() => new()
    {
        Title = "Ten yards",
        TitleNote = "electronic",
        Axis = new Axis("time", "s", 2, Better.Lower),
        Groups =
        [
            new StripGroup("Line", [new("Aldous", 1.82), new("Brannock", 1.90), new("Castell", 1.86)], 1.86, 1.88),
            new StripGroup("Receiver", [], null),
        ],
    };

    private static XElement Parse(StripPlot plot) => XElement.Parse("<x>" + plot.ToHtml() + "</x>");

    [Fact]
    public void ToHtml_Group_HasDotsBarRingAndNumber()
    {
        var rows = Parse(new StripPlot([Panel()], "13 April")).Descendants("tbody").First().Elements("tr").ToArray();

        Assert.Equal(["Line", "Receiver"], rows.Select(r => r.Element("th")!.Value));
        Assert.Equal(3, rows[0].Descendants("g").Single().Elements("circle").Count());
        Assert.Equal("m", rows[0].Descendants("line").Single().Attribute("class")!.Value);
        Assert.Equal("r", rows[0].Descendants("circle").Last().Attribute("class")!.Value);
        Assert.Equal(["1.86", "\u2013"], rows.Select(r => r.Elements("td").Last().Value));
        Assert.Empty(rows[1].Descendants("circle"));
    }

    [Fact]
    public void ToHtml_Key_NamesThePreviousDayOnlyWhenThereIsOne()
    {
        Assert.Contains("middle on 13 April", Parse(new StripPlot([Panel()], "13 April")).Value, StringComparison.Ordinal);
        Assert.DoesNotContain("middle on", Parse(new StripPlot([Panel()])).Value, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_Axis_HasUnitDirectionAndRoundTicks()
    {
        var head = Parse(new StripPlot([Panel()])).Descendants("thead").First();
        Assert.Equal("\u2190 better", head.Descendants("b").Single().Value);
        Assert.Equal("s", head.Descendants("span").Single().Value);
        // From 1.82 to 1.90 in 150 pixels: steps of 0.02 would give four labels of 40 pixels, so 0.05 it is.
        Assert.Equal(["1.85", "1.90"], head.Descendants("text").Select(t => t.Value));
    }

    [Fact]
    public void Numbers_Table_HasCountMiddleAndBefore()
        => Assert.Equal(
            "Ten yards\n\n" +
            "Group     Players  Lowest, s  Middle, s  Highest, s  Middle before, s\n" +
            "---------------------------------------------------------------------\n" +
            "Line            3       1.82       1.86        1.90              1.88\n" +
            "Receiver        0          \u2013          \u2013           \u2013                 \u2013",
            Panel().ToText());

    [Fact]
    public void New_NoPanels_IsRefused() => Assert.Equal("panels", Assert.Throws<ArgumentException>(() => new StripPlot([])).ParamName);
}
