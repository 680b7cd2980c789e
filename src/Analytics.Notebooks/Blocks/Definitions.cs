using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Blocks;

/// <summary>Terms with their text: methods, or where the numbers come from.</summary>
public sealed class Definitions : ReportBlock
{
    private readonly IReadOnlyList<(string Term, string Text)> _entries;

    /// <summary>Entries in reading order.</summary>
    /// <param name="entries">Term and text; at least one.</param>
    public Definitions(params IEnumerable<(string Term, string Text)> entries)
    {
        _entries = [.. entries];
        if (_entries.Count == 0) throw new ArgumentException("Definitions needs at least one entry.", nameof(entries));
    }

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        html.Raw("<dl>");
        foreach (var (term, text) in _entries) html.Add($"<dt>{term}</dt><dd>{text}</dd>");
        html.Raw("</dl>");
    }

    /// <inheritdoc/>
    public override string ToText() => string.Join('\n', _entries.Select(e => $"{e.Term}: {e.Text}"));
}
