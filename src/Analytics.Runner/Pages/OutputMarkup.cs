using System.Text.RegularExpressions;

namespace Analytics.Runner.Pages;

/// <summary>Fits HTML of cell outputs into a page: what could reach outside is disarmed, shared styles come once.</summary>
internal sealed partial class OutputMarkup
{
    private readonly HashSet<string> seen = new(StringComparer.Ordinal);
    private readonly List<string> hoisted = [];

    /// <summary>Styles that outputs asked to have in the page's head, in order of appearance.</summary>
    public IReadOnlyList<string> HoistedStyles => hoisted;

    public string Fit(string html) => Style().Replace(Disarm(html.ReplaceLineEndings("\n")), TakeStyle);

    // A policy in the page cannot forbid these: a meta element may send the reader elsewhere, a link element
    // may look up a host, an unclosed comment hides the rest of the page.
    private static string Disarm(string html) => Reaching().Replace(html, m => "&lt;" + m.Value[1..]);

    private string TakeStyle(Match match)
    {
        var css = match.Groups["css"].Value;
        var once = Once().Match(match.Groups["attributes"].Value);
        if (!once.Success)
            return seen.Add(css) ? match.Value : "";
        if (seen.Add("once:" + once.Groups["key"].Value))
            hoisted.Add(css);
        return "";
    }

    [GeneratedRegex(@"</?(?:meta|link|base|iframe|frame|frameset|object|embed|form|noscript|plaintext|html|head|body|main)\b|<!--", RegexOptions.IgnoreCase)]
    private static partial Regex Reaching();

    [GeneratedRegex(@"<style(?<attributes>[^>]*)>(?<css>.*?)</style>", RegexOptions.IgnoreCase | RegexOptions.Singleline)]
    private static partial Regex Style();

    [GeneratedRegex("""data-once\s*=\s*["']?(?<key>[^"'\s>]+)""", RegexOptions.IgnoreCase)]
    private static partial Regex Once();
}
