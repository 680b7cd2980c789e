using System.Xml.Linq;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Look;

public sealed class MarkupTests
{
    [Theory]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("\"><script>alert(1)</script>")]
    [InlineData("' onmouseover='alert(1)")]
    [InlineData("&lt;b&gt; already escaped &amp;")]
    [InlineData("\u05D0\u05D1\u05D2 right to left")]
    public void Add_HostileText_ComesBackAsTheSameTextAndNothingElse(string text)
    {
        var html = new Markup().Add($"<p title=\"{text}\">{text}</p>").ToString();

        var p = XElement.Parse(html);
        Assert.Equal(text, p.Value);
        Assert.Equal(text, p.Attribute("title")!.Value);
        Assert.Empty(p.Elements());
        Assert.Single(p.Attributes());
    }

    [Fact]
    public void Add_ControlsOverridesAndBrokenSurrogates_AreShownAsReplacement()
    {
        var html = new Markup().Add($"{"a\u0000b\u202Ec\uD800d\nE"}").ToString();
        Assert.Equal("a\uFFFDb\uFFFDc\uFFFDd E", System.Net.WebUtility.HtmlDecode(html));
    }

    [Fact]
    public void Add_Numbers_AreShortAndInvariant()
        => Assert.Equal("<i x=\"41.2\" n=\"7\"/>", new Markup().Add($"<i x=\"{41.2499}\" n=\"{7}\"/>").ToString());

    [Fact]
    public void Add_ThinSpace_BecomesOneThatDoesNotBreak()
        => Assert.Equal("7\u202Fkg", new Markup().Add($"{"7\u2009kg"}").ToString());

    [Fact]
    public void Add_Markup_IsNotEscapedTwice()
        => Assert.Equal("<b>&lt;</b>", new Markup().Add($"<b>{new Markup().Add($"{"<"}")}</b>").ToString());
}
