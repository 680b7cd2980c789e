namespace Analytics.Runner.Proofs;

/// <summary>
/// Cuts a text into the parts a proof tells of. Parts that are as they were made are found from the front and from the
/// back by their lengths and digests; what lies between was changed.
/// </summary>
internal sealed class PartCutter
{
    private readonly List<KeyValuePair<string, string>> parts = [];
    private readonly List<string> changed = [];

    public PartCutter(string text, IReadOnlyList<ProofPart> told)
    {
        int at = 0, first = 0;
        for (; first < told.Count && Fits(text, at, told[first]); first++)
        {
            parts.Add(new(told[first].Name, text.Substring(at, told[first].Length)));
            at += told[first].Length;
        }

        int end = text.Length, last = told.Count;
        var tail = new List<KeyValuePair<string, string>>();
        for (; last > first && end - told[last - 1].Length >= at && Fits(text, end - told[last - 1].Length, told[last - 1]); last--)
        {
            end -= told[last - 1].Length;
            tail.Insert(0, new(told[last - 1].Name, text.Substring(end, told[last - 1].Length)));
        }

        CutMiddle(text[at..end], [.. told.Skip(first).Take(last - first)]);
        parts.AddRange(tail);
    }

    /// <summary>Name and text of the parts.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Parts => parts;

    /// <summary>Names of those that were changed.</summary>
    public IReadOnlyList<string> Changed => changed;

    private static bool Fits(string text, int at, ProofPart part)
        => part.Length >= 0 && (long)at + part.Length <= text.Length && PartDigest.Of(text.AsSpan(at, part.Length)) == part.Sha256;

    // Parts with results begin with an element that carries their name, so most can be told apart even here.
    private void CutMiddle(string text, IReadOnlyList<ProofPart> told)
    {
        if (told.Count == 0)
        {
            if (text.Length > 0)
                Extend(text);
            return;
        }

        var at = 0;
        for (var i = 0; i < told.Count; i++)
        {
            var next = i + 1 < told.Count ? Begin(text, told[i + 1].Name, at) : text.Length;
            var piece = next < 0 ? "" : text[at..next];
            if (PartDigest.Of(piece) != told[i].Sha256)
                changed.Add(told[i].Name);
            parts.Add(new(told[i].Name, piece));
            at = next < 0 ? at : next;
        }
    }

    private void Extend(string text)
    {
        var (name, before) = parts.Count > 0 ? parts[^1] : new(PartNames.Head, "");
        if (parts.Count > 0)
            parts.RemoveAt(parts.Count - 1);
        parts.Add(new(name, before + text));
        changed.Add(name);
    }

    private static int Begin(string text, string name, int from) => name switch
    {
        PartNames.Opening => text.IndexOf("<body>", from, StringComparison.Ordinal),
        PartNames.Code => FirstOf(text, from, "<details class=\"how\"", "</main>"),
        PartNames.Foot => text.IndexOf("<footer>", from, StringComparison.Ordinal),
        PartNames.Script => text.LastIndexOf("<script>", StringComparison.Ordinal) is var at && at >= from ? at : -1,
        _ => text.IndexOf($"<div class=\"cell\" id=\"{name}\">", from, StringComparison.Ordinal),
    };

    private static int FirstOf(string text, int from, string one, string other)
    {
        var at = text.IndexOf(one, from, StringComparison.Ordinal);
        return at >= 0 ? at : text.IndexOf(other, from, StringComparison.Ordinal);
    }
}
