using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Blocks;

/// <summary>The cautions that travel with an output; always open, never folded away.</summary>
public sealed class Cautions : ReportBlock
{
    private readonly IReadOnlyList<string> _lines;

    /// <summary>Cautions, one sentence each.</summary>
    /// <param name="lines">At least one.</param>
    public Cautions(params IEnumerable<string> lines)
    {
        _lines = [.. lines];
        if (_lines.Count == 0) throw new ArgumentException("Cautions needs at least one line.", nameof(lines));
    }

    /// <summary>The heading.</summary>
    public string Title { get; init; } = "Before you act on this";

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        html.Add($"<div class=\"ca\"><h3>{Title}</h3>");
        Callout.WriteList(html, _lines);
        html.Raw("</div>");
    }

    /// <inheritdoc/>
    public override string ToText() => string.Join('\n', _lines.Select(l => "- " + l).Prepend(Title));
}
