using System.Text;
using Analytics.Runner.Proofs;

namespace Analytics.Runner.Pages;

/// <summary>The text of a page under construction, part by part, and what is needed to prove it later.</summary>
internal sealed class PageText(int capacity)
{
    private readonly StringBuilder text = new(capacity);
    private readonly List<ProofPart> parts = [];
    private readonly List<KeyValuePair<string, IReadOnlyList<PageItem>>> values = [];

    public IReadOnlyList<ProofPart> Parts => parts;

    /// <summary>What the parts with results tell; words in drawings are not repeated.</summary>
    public IReadOnlyList<KeyValuePair<string, IReadOnlyList<PageItem>>> Values => values;

    /// <summary>Adds a part.</summary>
    public PageText Part(string name, string html)
    {
        parts.Add(Of(name, html));
        return Free(html);
    }

    /// <summary>Adds a part that shows results.</summary>
    public PageText Results(string name, string html)
    {
        if (ContentReader.Read(html).Where(i => i is not PageDrawing).ToList() is { Count: > 0 } items)
            values.Add(new(name, items));
        return Part(name, html);
    }

    /// <summary>Adds what nothing is proved about.</summary>
    public PageText Free(string html)
    {
        text.Append(html);
        return this;
    }

    public override string ToString() => text.ToString();

    public static ProofPart Of(string name, string html) => new(name, html.Length, PartDigest.Of(html));
}
