namespace Analytics.Runner.Proofs;

/// <summary>
/// Cuts HTML into tags and text, in one pass. It is made for pages this program writes: of other HTML it makes
/// something, always in time that grows with the length only.
/// </summary>
internal static class HtmlTokens
{
    private static readonly string[] Raw = ["script", "style"];

    public static IEnumerable<HtmlToken> Of(string html)
    {
        for (var at = 0; at < html.Length;)
        {
            var tag = NextTag(html, at);
            if (tag > at)
                yield return new HtmlToken(HtmlTokenKind.Text, "", html[at..tag]);
            if (tag == html.Length)
                yield break;
            if (html.AsSpan(tag).StartsWith("<!"))
            {
                at = EndOfComment(html, tag);
                continue;
            }

            var end = EndOfTag(html, tag);
            var closes = html[tag + 1] == '/';
            var start = tag + (closes ? 2 : 1);
            var stop = start;
            while (stop < end && (char.IsAsciiLetterOrDigit(html[stop]) || html[stop] == '-'))
                stop++;
            var name = html[start..stop].ToLowerInvariant();
            yield return new HtmlToken(closes ? HtmlTokenKind.Close : HtmlTokenKind.Open, name, html[stop..end].TrimEnd('/'));
            at = Math.Min(end + 1, html.Length);
            if (closes || !Raw.Contains(name))
                continue;
            var close = html.IndexOf("</" + name, at, StringComparison.OrdinalIgnoreCase);
            close = close < 0 ? html.Length : close;
            yield return new HtmlToken(HtmlTokenKind.Text, name, html[at..close]);
            at = close;
        }
    }

    private static int NextTag(string html, int at)
    {
        for (; (at = html.IndexOf('<', at)) >= 0; at++)
        {
            if (at + 1 < html.Length && (char.IsAsciiLetter(html[at + 1]) || html[at + 1] is '!' or '/'))
                return at;
        }

        return html.Length;
    }

    private static int EndOfComment(string html, int at)
    {
        var end = html.AsSpan(at).StartsWith("<!--") ? html.IndexOf("-->", at, StringComparison.Ordinal) + 2 : html.IndexOf('>', at);
        return end < at ? html.Length : end + 1;
    }

    // A bracket inside a quoted value does not end the tag.
    private static int EndOfTag(string html, int at)
    {
        var quote = '\0';
        for (; at < html.Length; at++)
        {
            var c = html[at];
            if (quote != '\0')
                quote = c == quote ? '\0' : quote;
            else if (c is '"' or '\'')
                quote = c;
            else if (c == '>')
                return at;
        }

        return html.Length;
    }
}
