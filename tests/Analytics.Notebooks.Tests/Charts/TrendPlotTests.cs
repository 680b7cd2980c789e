using System.Xml.Linq;
using Analytics.Notebooks.Charts;

namespace Analytics.Notebooks.Tests.Charts;

public sealed class TrendPlotTests
{
    private static TrendPanel Panel(params DateOnly[] days) => new()
    {
        Title = "Back squat", Axis = new Axis("estimated 1RM", "kg", 0, Better.Higher), Lines = [new TrendLine("Squad", [.. days.Select((d, i) => new TrendPoint(d, 160 + i, 158 + i, 162 + i))])],
    };

    private static XElement Drawing(TrendPanel panel) => XElement.Parse("<x>" + new TrendPlot(panel).ToHtml() + "</x>").Descendants("svg").Single(s => s.Attribute("role")?.Value == "img");

    [Fact]
    public void ToHtml_Days_StandAtTheirDates()
    {
        var drawing = Drawing(Panel(new(2026, 3, 2), new(2026, 4, 13), new(2026, 6, 8)));
        var labels = drawing.Elements("text").ToArray();

        Assert.Equal(["2 Mar", "13 Apr", "8 Jun"], labels.Select(l => l.Value));
        // 98 days with 10 % of air at each side; the middle one 42 days after the first.
        Assert.Equal(["8.3%", "44%", "91.7%"], labels.Select(l => l.Attribute("x")!.Value));
        Assert.Equal(3, drawing.Descendants("path").Count());
    }

    [Fact]
    public void ToHtml_DaysThatCrowd_GoWithoutWords()
    {
        var labels = Drawing(Panel([.. Enumerable.Range(0, 30).Select(i => new DateOnly(2026, 3, 1).AddDays(i))])).Elements("text").ToArray();
        Assert.InRange(labels.Length, 2, 7);
    }

    [Fact]
    public void ToText_Panel_ListsDaysInOneFormat() => Assert.Contains("Squad  2026-03-02", Panel(new DateOnly(2026, 3, 2)).ToText(), StringComparison.Ordinal);

    [Fact]
    public void ToHtml_PlayersBehind_AreOneShapeWithinTheAxisAndLiveOneTraceWithGaps()
    {
        var days = new[] { new DateOnly(2026, 3, 2), new DateOnly(2026, 6, 8) };
        var alone = Panel(days);
        var panel = new TrendPanel { Title = alone.Title, Axis = alone.Axis, Lines = alone.Lines, Behind = [[new(days[0], 100), new(days[1], 110)], [new(days[0], 120)], [new(days[0], 210), new(days[1], 220)]] };
        var drawing = Drawing(panel);
        var behind = drawing.Descendants("path").Single(p => p.Attribute("class")?.Value == "bh");

        // The player tested once has no line.
        Assert.Equal(2, behind.Attribute("d")!.Value.Count(c => c == 'M'));
        Assert.All(behind.Attribute("d")!.Value.Split(['M', ' '], StringSplitOptions.RemoveEmptyEntries), place => Assert.InRange(double.Parse(place.Split(',')[1], System.Globalization.CultureInfo.InvariantCulture), 0, 150));
        Assert.Contains("100,110,null,210,220,null", panel.ToHtml(), StringComparison.Ordinal);
        Assert.DoesNotContain("210", panel.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void New_NoPanels_IsRefused() => Assert.Equal("panels", Assert.Throws<ArgumentException>(() => new TrendPlot()).ParamName);
}
