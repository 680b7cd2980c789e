using System.Net;
using System.Text.RegularExpressions;

namespace Analytics.Runner.Pages;

/// <summary>Finds what a page is about: its first heading.</summary>
internal static partial class PageTitle
{
    /// <summary>Text of the first h1 in HTML, or null.</summary>
    public static string? InHtml(string html)
    {
        var heading = Heading().Match(html);
        if (!heading.Success)
            return null;
        var text = WebUtility.HtmlDecode(Tag().Replace(heading.Groups["text"].Value, ""));
        return Spaces().Replace(text, " ").Trim() is { Length: > 0 } title ? title : null;
    }

    [GeneratedRegex(@"<h1\b[^>]*>(?<text>.*?)</h1\s*>", RegexOptions.IgnoreCase | RegexOptions.Singleline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
