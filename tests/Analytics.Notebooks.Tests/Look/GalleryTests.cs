using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Look;

/// <summary>What holds for every block, whatever people typed.</summary>
public sealed partial class GalleryTests
{
    public static TheoryData<string> OutsideTexts =>
    [
        "<img src=x onerror=alert(1)>",
        "\"><script>alert(1)</script>",
        "'-->]]></style></svg></table><iframe>",
        "</script><script>alert(1)</script>",
        "%{x} ${y} $e^x$ &lt;b&gt; <b>bold</b>",
        "\u202E\u05D0\u05D1\u05D2 \u0627\u0644\u0639",
        "a\u0000\u0007\uD800b",
        " ",
        new string('W', 5000),
    ];

    [Fact]
    public void Page_TameNames_CanBeKept()
    {
        // To look at the blocks: LOOK_GALLERY=/tmp/gallery.html dotnet test --filter GalleryTests
        if (Environment.GetEnvironmentVariable("LOOK_GALLERY") is not { Length: > 0 } path) return;
        var outside = Environment.GetEnvironmentVariable("LOOK_OUTSIDE");
        File.WriteAllText(path, Gallery.Page(new Gallery(outside).Blocks()));
    }

    [Theory]
    [MemberData(nameof(OutsideTexts))]
    public void ToHtml_OutsideText_StaysText(string outside)
    {
        var tame = Names(Parse(new Gallery()));
        var wild = Parse(new Gallery(outside));

        // No element and no attribute that the tame page does not have, so nothing typed became markup.
        Assert.Superset(Names(wild), tame.Union(["class"]).ToHashSet());
        Assert.DoesNotContain(wild.DescendantsAndSelf().Attributes(), a => a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
        Assert.All(wild.Descendants("script"), s => Assert.Equal("application/json", s.Attribute("type")!.Value));
    }

    [Theory]
    [MemberData(nameof(OutsideTexts))]
    public void FigureData_OutsideText_IsJsonThatCannotEndItsElement(string outside)
    {
        var data = Data(new Gallery(outside)).ToArray();

        Assert.Equal(Data(new Gallery()).Count(), data.Length);
        Assert.All(data, json =>
        {
            Assert.DoesNotContain("<", json, StringComparison.Ordinal);
            using var figure = JsonDocument.Parse(json);
            Assert.Equal(["config", "data", "layout"], figure.RootElement.EnumerateObject().Select(p => p.Name).Order(StringComparer.Ordinal));
            Assert.False(figure.RootElement.GetProperty("layout").TryGetProperty("template", out _));
            // Plotly reads tags in text: apart from our own bold words none may be left.
            Assert.DoesNotMatch(ForeignTag(), string.Concat(Strings(figure.RootElement)));
        });
    }

    [Fact]
    public void ToHtml_SameInputs_SameBytesInAnyCulture()
    {
        var before = CultureInfo.CurrentCulture;
        var first = Gallery.Page(new Gallery().Blocks());
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            comma.NumberFormat.NegativeSign = "~";
            comma.DateTimeFormat.AbbreviatedMonthNames = [.. Enumerable.Range(0, 13).Select(i => $"m{i}")];
            CultureInfo.CurrentCulture = comma;

            Assert.Equal(first, Gallery.Page(new Gallery().Blocks()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void ToHtml_EveryFigure_HasNameDrawingDataAndTable()
    {
        var figures = Parse(new Gallery()).Descendants("figure").ToArray();

        Assert.Equal(13, figures.Length);
        Assert.Equal(13, figures.Select(f => f.Attribute("aria-labelledby")!.Value).Distinct().Count());
        Assert.All(figures, f =>
        {
            Assert.Equal(f.Attribute("aria-labelledby")!.Value, f.Element("figcaption")!.Attribute("id")!.Value);
            Assert.NotEmpty(f.Elements("div").Single(d => d.Attribute("class")!.Value == "fig-static").Descendants("svg"));
            var live = f.Elements("div").Single(d => d.Attribute("class")!.Value == "fig-live");
            Assert.NotNull(live.Attribute("hidden"));
            Assert.Equal("fig-data", f.Element("script")!.Attribute("class")!.Value);
            Assert.NotEmpty(f.Elements("details").Single(d => d.Attribute("class")!.Value == "fig-table").Descendants("td"));
        });
    }

    [Fact]
    public void ToHtml_ReportForSixty_KeepsRoomForTheChartLibrary()
    {
        // 1.6 MB for the page less 1.45 MB for the packed library leaves 150 kB; the page around the blocks takes some.
        var html = new Gallery().Blocks().Select(b => b.ToHtml().Replace(Sheet.StyleElement, string.Empty, StringComparison.Ordinal));

        Assert.InRange(Encoding.UTF8.GetByteCount(string.Concat(html)) + Encoding.UTF8.GetByteCount(Sheet.StyleElement), 50_000, 150_000);
    }

    [Fact]
    public void ToText_EveryBlock_HasNoMarkup()
        => Assert.All(new Gallery().Blocks(), b =>
        {
            Assert.NotEmpty(b.ToText());
            Assert.DoesNotContain("<", b.ToText(), StringComparison.Ordinal);
            Assert.Equal(b.ToText(), b.ToString());
        });

    private static XElement Parse(Gallery gallery) => XElement.Parse("<x>" + string.Concat(gallery.Blocks().Select(b => b.ToHtml())) + "</x>");

    // Taken from the text as a browser does it: up to the first end tag, entities left alone.
    private static IEnumerable<string> Data(Gallery gallery)
        => gallery.Blocks().SelectMany(b => FigureData().Matches(b.ToHtml())).Select(m => m.Groups["json"].Value);

    private static HashSet<string> Names(XElement page)
        => [.. page.Descendants().Select(e => e.Name.LocalName), .. page.Descendants().Attributes().Select(a => a.Name.LocalName)];

    private static IEnumerable<string> Strings(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Strings(p.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Strings),
        JsonValueKind.String => [element.GetString()!],
        _ => [],
    };

    [GeneratedRegex("<script type=\"application/json\" class=\"fig-data\">(?<json>.*?)</script", RegexOptions.Singleline)]
    private static partial Regex FigureData();

    [GeneratedRegex("<(?!/?b>|extra>|/extra>)")]
    private static partial Regex ForeignTag();
}
