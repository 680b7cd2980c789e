using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Blocks;

/// <summary>A question of the report: heading, one leading sentence, and what answers it.</summary>
public sealed class Section : ReportBlock
{
    private readonly string _title;
    private readonly string _lead;
    private readonly IReadOnlyList<Block> _body;

    /// <summary>A section; its body may also follow as outputs of later cells.</summary>
    /// <param name="title">The question or quantity.</param>
    /// <param name="lead">How to read what follows; may be empty.</param>
    /// <param name="body">Blocks of the section.</param>
    public Section(string title, string lead = "", params IEnumerable<Block> body)
    {
        _title = title;
        _lead = lead;
        _body = [.. body];
    }

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        html.Raw(_body.Count == 0 ? "<div class=\"se so\">" : "<div class=\"se\">").Add($"<h2>{_title}</h2>");
        if (_lead.Length > 0) html.Add($"<p class=\"ld\">{_lead}</p>");
        foreach (var block in _body) WriteInner(html, block);
        html.Raw("</div>");
    }

    /// <inheritdoc/>
    public override string ToText()
        => Join([$"{_title}\n{new string('=', Math.Min(_title.Length, 70))}", _lead, .. _body.Select(b => b.ToText())]);
}
