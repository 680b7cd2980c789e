using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace Analytics.Runner.Pages;

/// <summary>Text as HTML.</summary>
internal static class Html
{
    // Letters of any script stay as they are: the page is UTF-8. Markup characters never do.
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    public static string Text(string text) => Encoder.Encode(text).Replace("&#xA;", "\n", StringComparison.Ordinal);
}
