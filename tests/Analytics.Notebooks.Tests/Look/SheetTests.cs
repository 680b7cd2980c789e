using System.Text.RegularExpressions;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Look;

public sealed partial class SheetTests
{
    [Fact]
    public void Css_EverySelector_IsScoped()
    {
        var selectors = Blocks().Matches(Sheet.Css).Select(m => m.Groups["selector"].Value.Trim())
            .Where(s => !s.StartsWith('@')).SelectMany(s => s.Split(',')).Select(s => s.Trim()).ToArray();

        Assert.True(selectors.Length > 100);
        Assert.All(selectors, s => Assert.StartsWith(".rb", s, StringComparison.Ordinal));
    }

    [Fact]
    public void Css_Text_AsksForNothingFromOutside()
    {
        Assert.DoesNotContain("url(", Sheet.Css, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", Sheet.Css, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<", Sheet.Css, StringComparison.Ordinal);
    }

    [Fact]
    public void Css_Braces_AreBalanced() => Assert.Equal(Sheet.Css.Count(c => c == '{'), Sheet.Css.Count(c => c == '}'));

    [Fact]
    public void StyleElement_CanBeKeptOnce() => Assert.StartsWith("<style data-once=\"look\">", Sheet.StyleElement, StringComparison.Ordinal);

    [GeneratedRegex(@"(?<selector>[^{}]+)\{")]
    private static partial Regex Blocks();
}
