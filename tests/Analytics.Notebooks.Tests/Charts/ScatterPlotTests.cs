using System.Xml.Linq;
using Analytics.Notebooks.Charts;

namespace Analytics.Notebooks.Tests.Charts;

public sealed class ScatterPlotTests
{
    private static ScatterPlot Plot(params ScatterPoint[] points) => new()
    {
        Title = "Mass and speed",
        Across = new Axis("body mass", "kg", 1),
        Up = new Axis("speed", "m/s", 2, Better.Higher),
        Points = points,
        References = [new Curve("600\u2009kg\u00b7m/s", [.. Enumerable.Range(70, 90).Select(m => ((double)m, 600.0 / m))])],
    };

    private static XElement Drawing(ScatterPlot plot) => XElement.Parse("<x>" + plot.ToHtml() + "</x>").Descendants("svg").Single(s => s.Attribute("role")?.Value == "img");

    [Fact]
    public void ToHtml_Groups_DifferByShapeAndColour()
    {
        var marks = Drawing(Plot(new("Aldous", 90, 7, "Backs"), new("Brannock", 120, 6, "Linemen"), new("Castell", double.NaN, 6, "Linemen"))).Descendants("path").ToArray();

        Assert.Equal(["p0", "p1"], marks.Select(m => m.Attribute("class")!.Value));
        Assert.Equal(2, marks.Select(m => m.Attribute("d")!.Value).Distinct().Count());
    }

    [Fact]
    public void ToHtml_Reference_IsNamedInsideTheChart()
    {
        var name = Drawing(Plot(new("Aldous", 90, 7), new("Brannock", 120, 5))).Elements("text").Single(t => t.Value.StartsWith("600", StringComparison.Ordinal));
        Assert.InRange(double.Parse(name.Attribute("x")!.Value.TrimEnd('%'), System.Globalization.CultureInfo.InvariantCulture), 20, 99);
        Assert.Contains("end", name.Attribute("class")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_NamesThatWouldMeet_AreNotAllDrawn()
    {
        var crowd = Enumerable.Range(0, 30).Select(i => new ScatterPoint($"Player with a long name {i}", 100 + (i * 0.01), 6.5, Labelled: true)).ToArray();
        Assert.InRange(Drawing(Plot([.. crowd, new("Far", 130, 7)])).Elements("text").Count(t => t.Value.StartsWith("Player", StringComparison.Ordinal)), 1, 6);
    }

    // Orange says loss elsewhere, so a landmark among the players is drawn in the colour of text.
    [Fact]
    public void ToHtml_NamedPointsAmongPlayers_AreInk()
    {
        var marks = Drawing(Plot(new("Aldous", 90, 7, "a player"), new("Backs", 95, 7, "middle of a group", true))).Descendants("path").ToArray();
        Assert.Equal(["p0", "p2"], marks.Select(m => m.Attribute("class")!.Value));
    }

    // Two dots hem in the named mark on each side: its name may stand on one of them, not go missing.
    [Fact]
    public void ToHtml_NamedPointInACrowd_KeepsItsName()
    {
        var crowd = new[] { (-2, 0.0), (2, 0.0), (0, 0.06), (0, -0.06) }.Select(d => new ScatterPoint("", 100 + d.Item1, 6 + d.Item2, "a player"));
        var texts = Drawing(Plot([new("Backs", 100, 6, "middle of a group", true), .. crowd, new("", 70, 5, "a player"), new("", 130, 7, "a player")])).Elements("text").Select(t => t.Value);
        Assert.Contains("Backs", texts);
    }

    [Fact]
    public void ToHtml_MarkAmongManyUnnamedOnes_StillHasItsName()
    {
        // A ring of players so dense that the name covers more than a few of them on every side.
        var crowd = Enumerable.Range(0, 200).Select(i => new ScatterPoint($"P{i}", 100 + (12 * Math.Cos(i)), 6.5 + (0.5 * Math.Sin(i * 7)), "a player"));
        var plot = Plot([.. crowd, new("Running backs", 100, 6.5, "middle of a group", Labelled: true)]);

        Assert.Contains("Running backs", Drawing(plot).Elements("text").Select(t => t.Value));
    }

    [Fact]
    public void ToHtml_LabelledPoint_ShowsItsName()
    {
        var texts = Drawing(Plot(new("Aldous", 90, 7, Labelled: true), new("Brannock", 120, 6))).Elements("text").Select(t => t.Value).ToArray();
        Assert.Contains("Aldous", texts);
        Assert.DoesNotContain("Brannock", texts);
    }
}
