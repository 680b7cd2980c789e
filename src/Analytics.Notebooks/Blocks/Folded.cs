using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Blocks;

/// <summary>Blocks folded away behind a line: closed on a screen, open in print unless <see cref="ScreenOnly"/>.</summary>
public sealed class Folded : ReportBlock
{
    private readonly string _summary;
    private readonly IReadOnlyList<Block> _body;

    /// <summary>A fold.</summary>
    /// <param name="summary">What is inside, for example <c>Methods and sources</c>.</param>
    /// <param name="body">The blocks inside.</param>
    public Folded(string summary, params IEnumerable<Block> body)
    {
        _summary = summary;
        _body = [.. body];
    }

    /// <summary>On paper only the line, unless it was opened: for pictures and sentences whose numbers a printed table has.</summary>
    public bool ScreenOnly { get; init; }

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        html.Add($"<details class=\"{(ScreenOnly ? "fo scr" : "fo")}\"><summary>{OutsideText.Label(_summary)}</summary>");
        foreach (var block in _body) WriteInner(html, block);
        html.Raw("</details>");
    }

    /// <inheritdoc/>
    public override string ToText() => Join([_summary, .. _body.Select(b => b.ToText())]);
}
