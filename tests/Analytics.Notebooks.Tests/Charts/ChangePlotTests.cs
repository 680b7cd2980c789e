using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Analytics.Notebooks.Charts;

namespace Analytics.Notebooks.Tests.Charts;

public sealed class ChangePlotTests
{
    private static readonly ChangeRow[] Squad =
    [
        new("Castell", 9, 0, 18, ChangeVerdict.CannotTellYet),
        new("Aldous", 18, 9, 27, ChangeVerdict.ClearGain),
        new("Garrow", -13, -22, -4, ChangeVerdict.ClearLoss, Note: "check health first"),
        new("Ewart", 1, -2, 4, ChangeVerdict.TooSmallToMatter),
        new("Fenner", -6, null, null, ChangeVerdict.NoErrorKnown),
    ];

    private static ChangePlot Plot(Better better = Better.Higher, int shown = int.MaxValue, IEnumerable<ChangeRow>? rows = null) => new()
    {
        Title = "Change in back squat", Axis = new Axis("change", "kg", 0, better), Rows = [.. rows ?? Squad], TooSmall = 5, UndecidedShown = shown,
    };

    private static XElement Parse(ChangePlot plot) => XElement.Parse("<x>" + plot.ToHtml() + "</x>");

    private static XElement[] Rows(XElement page) => [.. page.Descendants("table").First(t => t.Attribute("class")!.Value.Contains("wd", StringComparison.Ordinal)).Element("tbody")!.Elements("tr")];

    [Fact]
    public void ToHtml_Rows_RunFromTheBestChangeDown()
        => Assert.Equal(["Aldous", "Castell", "Ewart", "Fenner", "Garrow"], Rows(Parse(Plot())).Select(r => r.Element("th")!.Value));

    [Fact]
    public void ToHtml_InOrder_KeepsTheOrderTheHeadAndTheNumbersGiven()
    {
        var plot = new ChangePlot
        {
            Title = "Season change", NameHead = "Measure", InOrder = true, TooSmall = 1,
            Axis = new Axis("change", "", 1, Better.Higher), Rows = [new("Squat", 1, 0.5, 1.5, ChangeVerdict.CannotTellYet) { Shown = "+18 lb (+9 to +27)" }, new("Sprint", 2, 1.2, 2.8, ChangeVerdict.ClearGain)],
        };
        var page = Parse(plot);

        Assert.Equal(["Squat", "Sprint"], Rows(page).Select(r => r.Element("th")!.Value));
        Assert.Equal("Measure", page.Descendants("th").First().Value);
        Assert.Equal("+18 lb (+9\u00A0to\u00A0+27)", Rows(page)[0].Elements("td").ElementAt(1).Value);
        Assert.Contains("+18 lb (+9 to +27)", plot.ToText(), StringComparison.Ordinal);
        Assert.Contains("+18 lb (+9 to +27)", plot.ToHtml().Split("fig-data")[1], StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_LowerIsBetter_TurnsOrderAndArrow()
    {
        var page = Parse(Plot(Better.Lower));
        Assert.Equal("Garrow", Rows(page)[0].Element("th")!.Value);
        Assert.Contains(page.Descendants("b"), b => b.Value == "\u2190 better");
    }

    [Fact]
    public void ToHtml_NoDirection_DrawsNoArrow() => Assert.DoesNotContain("better", Parse(Plot(Better.Neither)).Value, StringComparison.Ordinal);

    [Fact]
    public void ToHtml_EveryVerdict_HasItsMarkWordsAndColour()
    {
        var rows = Rows(Parse(Plot()));

        Assert.Equal(["clear gain", "cannot tell yet", "too small to matter", "no error known", "clear losscheck health first"], rows.Select(r => r.Elements("td").Last().Value));
        Assert.Equal(["gain", null, null, null, "loss"], rows.Select(r => r.Attribute("class")?.Value));
        // A diamond is a path, a hollow mark a circle; without an error there is no interval to draw.
        Assert.Equal([1, 0, 0, 0, 1], rows.Select(r => r.Descendants("path").Count()));
        Assert.Equal([0, 1, 1, 1, 0], rows.Select(r => r.Descendants("circle").Count()));
        Assert.Equal([1, 1, 1, 0, 1], rows.Select(r => r.Descendants("line").Count()));
        Assert.Equal("s", rows[2].Descendants("circle").Single().Attribute("class")!.Value);
    }

    [Fact]
    public void ToHtml_Numbers_StandBesideTheMarks()
    {
        var rows = Rows(Parse(Plot()));
        Assert.Equal("+18\u202Fkg (+9\u00A0to\u00A0+27)", rows[0].Elements("td").ElementAt(1).Value);
        Assert.Equal("\u22126\u202Fkg", rows[3].Elements("td").ElementAt(1).Value);
    }

    [Fact]
    public void ToHtml_Marks_StandWhereTheirNumbersSay()
    {
        // The axis runs from the smallest to the largest number, -22 to 27, with 4 % of air at each side: -23.96 to 28.96.
        var row = Rows(Parse(Plot()))[0];
        Assert.Equal("79.3%", row.Descendants("svg").Last().Attribute("x")!.Value);
        Assert.Equal("62.3%", row.Descendants("line").Single().Attribute("x1")!.Value);
        Assert.Equal("96.3%", row.Descendants("line").Single().Attribute("x2")!.Value);
    }

    [Fact]
    public void ToHtml_Folded_KeepsClearRowsAndTheLargestUndecidedInSight()
    {
        var page = Parse(Plot(shown: 1));

        Assert.Equal(["Aldous", "Castell", "Garrow"], Rows(page).Select(r => r.Element("th")!.Value));
        var more = page.Descendants("details").Single(d => d.Attribute("class")!.Value == "more");
        Assert.Equal("2 more where the test cannot tell yet", more.Element("summary")!.Value);
        Assert.Equal(["Ewart", "Fenner"], more.Descendants("tbody").Single().Elements("tr").Select(r => r.Element("th")!.Value));
    }

    [Fact]
    public void ToHtml_FoldedNumbersPrintedElsewhere_StayFoldedInPrint()
    {
        var plot = new ChangePlot { Title = "Change", Axis = new Axis("change", "kg", 0, Better.Higher), Rows = Squad, UndecidedShown = 1, FoldedInPrint = false };
        Assert.Contains(Parse(plot).Descendants("details"), d => d.Attribute("class")!.Value == "more scr");
    }

    [Fact]
    public void ToHtml_Live_ColumnsHaveHeads()
    {
        using var data = JsonDocument.Parse(Parse(Plot()).Descendants("script").Single().Value);
        var words = data.RootElement.GetProperty("layout").GetProperty("annotations").EnumerateArray().Select(a => a.GetProperty("text").GetString()!).ToArray();
        Assert.Contains("What it says", words);
        Assert.Contains("too small to matter", words);
        Assert.Contains(words, w => w.StartsWith("Change (95", StringComparison.Ordinal));
    }

    // Plotly decodes &#34; but shows &quot; as it is written (seen in Chromium).
    [Fact]
    public void ToHtml_LiveNameWithQuotes_EscapesThemByNumber()
    {
        var html = Plot(rows: [new("D'Arcy \"Tank\" N'Diaye", 9, 4, 14, ChangeVerdict.ClearGain)]).ToHtml();
        var data = html[html.IndexOf("<script", StringComparison.Ordinal)..html.IndexOf("</script>", StringComparison.Ordinal)];
        Assert.DoesNotContain("&quot;Tank", data, StringComparison.Ordinal);
        Assert.Contains("&#34;Tank", data, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_TwoPlayersAlike_BothShow()
        => Assert.Equal(2, Rows(Parse(Plot(rows: [Squad[0], Squad[0] with { }]))).Length);

    [Fact]
    public void ToHtml_NoRows_StillStands() => Assert.Empty(Rows(Parse(Plot(rows: []))));

    [Fact]
    public void ToHtml_ValuesThatCannotBeDrawn_KeepTheirRow()
    {
        var rows = Rows(Parse(Plot(rows: [new("Aldous", double.NaN, 1, 2, ChangeVerdict.CannotTellYet), new("Brannock", 1e308, double.NegativeInfinity, 1, ChangeVerdict.CannotTellYet)])));
        Assert.Equal(2, rows.Length);
        Assert.DoesNotContain(rows.Descendants().Attributes(), a => a.Value.Contains("NaN", StringComparison.Ordinal) || a.Value.Contains('\u221E', StringComparison.Ordinal));
    }

    [Fact]
    public void ToPlotly_Data_AgreesWithTheDrawing()
    {
        var html = Plot().ToHtml();
        var json = html[(html.IndexOf("fig-data\">", StringComparison.Ordinal) + 10)..];
        using var figure = JsonDocument.Parse(json[..json.IndexOf("</script", StringComparison.Ordinal)]);
        var layout = figure.RootElement.GetProperty("layout");
        var traces = figure.RootElement.GetProperty("data").EnumerateArray().ToArray();

        Assert.Equal(["Aldous", "Castell", "Ewart", "Fenner", "Garrow"], layout.GetProperty("yaxis").GetProperty("ticktext").EnumerateArray().Select(t => t.GetString()));
        var gain = traces[0];
        Assert.Equal("diamond", gain.GetProperty("marker").GetProperty("symbol").GetString());
        Assert.Equal(18, gain.GetProperty("x")[0].GetDouble());
        Assert.Equal(9, gain.GetProperty("error_x").GetProperty("array")[0].GetDouble());
        Assert.Equal("too small to matter", layout.GetProperty("annotations")[0].GetProperty("text").GetString());
        Assert.All(traces, t => Assert.Equal("scatter", t.GetProperty("type").GetString()));
        // No error known: a gap, not a number.
        Assert.Contains(traces, t => t.TryGetProperty("error_x", out var e) && e.GetProperty("array").EnumerateArray().Any(v => v.ValueKind == JsonValueKind.Null));
    }

    [Fact]
    public void ToText_Plot_IsItsTable()
        => Assert.Contains("Garrow \u221213 \u221222 to \u22124 clear loss (check health first)", Regex.Replace(Plot().ToText(), " +", " "), StringComparison.Ordinal);
}
