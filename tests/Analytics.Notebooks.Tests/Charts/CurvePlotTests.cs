using System.Text.RegularExpressions;
using System.Xml.Linq;
using Analytics.Notebooks.Charts;

namespace Analytics.Notebooks.Tests.Charts;

public sealed class CurvePlotTests
{
    private static readonly CurvePlot Plot = new()
    {
        Title = "Speed over distance",
        Across = new Axis("distance", "yd", 0),
        Up = new Axis("speed", "m/s", 1, Better.Higher),
        Curves =
        [
            new Curve("Castell", [(0, 0), (10, 6), (20, 8)]) { Band = [(0, 0, 0), (10, 5.6, 6.6), (20, 7.5, 8.5)], Points = [new(10, 6.2, 5.9, 6.5), new(15, double.NaN)] },
            new Curve("Middle of the group", [(0, 0), (20, 9)]),
        ],
    };

    private static XElement Drawing() => XElement.Parse("<x>" + Plot.ToHtml() + "</x>").Descendants("svg").Single(s => s.Attribute("role")?.Value == "img");

    [Fact]
    public void ToHtml_Drawing_HasANameLinesBandAndPoint()
    {
        var drawing = Drawing();
        Assert.Equal("Speed over distance", drawing.Attribute("aria-label")!.Value);
        Assert.Equal(2, drawing.Descendants("polyline").Count());
        Assert.Single(drawing.Descendants("polygon"));
        // One point can be drawn; the other has no number and leaves a gap.
        Assert.Single(drawing.Descendants("path"));
    }

    [Fact]
    public void ToHtml_Curve_RunsThroughItsPlaces()
    {
        // Across 0 to 20 with 2 % of air: -0.4 to 20.4. Up 0 to 9 with 6 % of air: -0.54 to 9.54, 260 pixels high.
        var points = Drawing().Descendants("polyline").First().Attribute("points")!.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(["19,246.1", "500,91.3", "981,39.7"], points);
    }

    [Fact]
    public void ToHtml_TwoCurves_HaveAKeyWithDashAndColour()
    {
        var key = XElement.Parse("<x>" + Plot.ToHtml() + "</x>").Descendants("p").First(p => p.Attribute("class")?.Value == "key");
        Assert.Equal(["Castell", "Middle of the group"], key.Elements("span").Select(s => s.Value));
        Assert.Equal(["c0", "c1"], key.Descendants("line").Select(l => l.Attribute("class")!.Value));
    }

    [Fact]
    public void Numbers_Table_ReadsTheCurveAtTheTicks()
    {
        var text = Regex.Replace(Plot.ToText(), " +", " ");
        // Half way between 0 and 10 yards the line is at 3.0, its band at 2.8 and 3.3.
        Assert.Contains("Castell 5 3.0 2.8 to 3.3 on the curve", text, StringComparison.Ordinal);
        Assert.Contains("Castell 10 6.2 5.9 to 6.5 measured", text, StringComparison.Ordinal);
    }
}
