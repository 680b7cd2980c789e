using System.Xml.Linq;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Charts;

public sealed class IntervalPlotTests
{
    private static XElement[] Rows() =>
    [
        .. XElement.Parse("<x>" + new IntervalPlot
        {
            Title = "Time to contact",
            Axis = new Axis("time to contact", "s", 2, Better.Lower),
            Window = new Window("target window", 0.40, 0.45),
            Rows =
            [
                new("Aldous", 0.445, 0.43, 0.461, "in window: 61\u2009%") { Repetitions = [0.431, 0.455] },
                new("Dray", 0.452, null, null, "one repetition only", Tone.Loss),
                new("Ewart", null, null, null, "not filmed"),
            ],
        }.ToHtml() + "</x>").Descendants("tbody").First().Elements("tr"),
    ];

    [Fact]
    public void ToHtml_Row_ShowsEstimateIntervalAndRepetitions()
    {
        var row = Rows()[0];
        Assert.Equal(2, row.Descendants("circle").Count());
        Assert.Equal(2, row.Descendants("line").Count());
        Assert.Equal("0.45\u202Fs (0.43\u00A0to\u00A00.46)", row.Elements("td").ElementAt(1).Value);
    }

    [Fact]
    public void ToHtml_NoErrorKnown_SaysSo()
    {
        var row = Rows()[1];
        Assert.Single(row.Descendants("line"));
        Assert.Equal("0.45\u202Fs (no error known)", row.Elements("td").ElementAt(1).Value);
        Assert.Equal("loss", row.Attribute("class")!.Value);
    }

    [Fact]
    public void ToHtml_NothingMeasured_KeepsTheRow()
    {
        var row = Rows()[2];
        Assert.Empty(row.Descendants("line"));
        Assert.Equal(["", "\u2013", "not filmed"], row.Elements("td").Select(t => t.Value));
    }
}
