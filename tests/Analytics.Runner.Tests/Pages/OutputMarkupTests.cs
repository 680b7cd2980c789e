using Analytics.Runner.Pages;

namespace Analytics.Runner.Tests.Pages;

public class OutputMarkupTests
{
    private readonly OutputMarkup markup = new();

    [Fact]
    public void Fit_StylesMarkedOnce_AreHoistedOnce()
    {
        Assert.Equal("<p>a</p>", markup.Fit("<style data-once=\"look\">.a{}</style><p>a</p>"));
        Assert.Equal("<p>b</p>", markup.Fit("<style data-once=\"look\">.a{}</style><p>b</p>"));
        Assert.Equal("", markup.Fit("<style data-once='other'>.b{}</style>"));
        Assert.Equal([".a{}", ".b{}"], markup.HoistedStyles);
    }

    [Fact]
    public void Fit_SameStyleAgain_IsLeftOut()
    {
        Assert.Equal("<style>x{}</style>1", markup.Fit("<style>x{}</style>1"));
        Assert.Equal("2<style>y{}</style>", markup.Fit("<style>x{}</style>2<style>y{}</style>"));
        Assert.Empty(markup.HoistedStyles);
    }

    [Theory]
    [InlineData("<meta http-equiv=\"refresh\" content=\"0;url=http://x.invalid\">")]
    [InlineData("<LINK rel=preconnect href=http://x.invalid>")]
    [InlineData("<base href=http://x.invalid>")]
    [InlineData("<iframe src=http://x.invalid></iframe>")]
    [InlineData("<object data=x></object>")]
    [InlineData("<form action=x>")]
    [InlineData("</main>")]
    [InlineData("</body>")]
    [InlineData("<!-- never closed")]
    public void Fit_WhatReachesOutsideItsPlace_BecomesText(string html)
        => Assert.Equal(html.Replace("<", "&lt;", StringComparison.Ordinal), markup.Fit(html));

    [Fact]
    public void Fit_HarmlessMarkup_StaysAsItIs()
    {
        const string Html = "<header><figure data-x=\"1\"><b>a</b></figure></header><metadata-x></metadata-x>";
        Assert.Equal(Html, markup.Fit(Html).Replace("&lt;", "<", StringComparison.Ordinal));
    }
}
