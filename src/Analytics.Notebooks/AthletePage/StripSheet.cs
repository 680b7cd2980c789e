using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.AthletePage;

/// <summary>One row: a drawing with its numbers and words beside it.</summary>
/// <param name="Name">The test.</param>
/// <param name="Note">Small print under the name; may be empty.</param>
/// <param name="Drawing">Marks in the grammar of the charts, places in per cent; empty when nothing can be drawn.</param>
/// <param name="Spoken">The drawing in words.</param>
/// <param name="Number">The number.</param>
/// <param name="Limits">Its range in brackets; may be empty.</param>
/// <param name="Beside">What stands in a column of its own beside the number; null for no such column.</param>
/// <param name="Words">What it says.</param>
/// <param name="Remark">Small print under the words; may be empty.</param>
/// <param name="Tone">Colour of mark and words.</param>
internal sealed record StripLine(string Name, string Note, Markup? Drawing, string Spoken, string Number, string Limits, string? Beside, string Words, string Remark, Tone Tone);

/// <summary>
/// A still chart as a table: name, drawing, number, words. It carries no script and no second form, so a page of it stays small; in a narrow
/// place its rows become cards, as those of the other charts do.
/// </summary>
internal sealed class StripSheet(string title, string numbersHead, string besideHead, string ground, Markup axis, Markup key, IReadOnlyList<StripLine> lines) : ReportBlock
{
    /// <summary>A further class of the table.</summary>
    public string Kind { get; init; } = "";

    public override void WriteHtml(Markup html)
    {
        var id = StableId.Of("fig", title + "\n" + string.Concat(lines.Select(l => l.Spoken)));
        html.Add($"<figure class=\"fig\" aria-labelledby=\"{id}\"><figcaption id=\"{id}\" class=\"vh\">{title}</figcaption><p class=\"key\">{key}</p>");
        html.Add($"<table class=\"st wd {Kind}\" style=\"--g:{new Markup().Raw(ground)}\"><thead><tr><th scope=\"col\">Test</th><th scope=\"col\">{axis}</th><th scope=\"col\">{numbersHead}</th>");
        if (besideHead.Length > 0) html.Add($"<th scope=\"col\">{besideHead}</th>");
        html.Raw("<th scope=\"col\">What it says</th></tr></thead><tbody>");
        foreach (var line in lines) Write(html, line);
        html.Raw("</tbody></table></figure>");
    }

    public override string ToText() => Join([title, .. lines.Select(l =>
        $"{l.Name}{(l.Note.Length > 0 ? $" ({l.Note})" : "")}: {l.Number}{(l.Limits.Length > 0 ? " " + l.Limits : "")}{(l.Beside is { Length: > 0 } beside ? "; " + beside : "")}; {l.Words}{(l.Remark.Length > 0 ? $" ({l.Remark})" : "")}. {l.Spoken}")]);

    private static void Write(Markup html, StripLine line)
    {
        html.Add($"<tr{ToneClass.Attribute(line.Tone)}><th scope=\"row\">{OutsideText.Label(line.Name)}");
        if (line.Note.Length > 0) html.Add($" <small>{line.Note}</small>");
        html.Raw("</th><td>");
        if (line.Drawing is { } drawing) html.Add($"<svg role=\"img\" aria-label=\"{line.Spoken}\">{drawing}</svg>");
        html.Add($"</td><td>{line.Number}");
        if (line.Limits.Length > 0) html.Add($" <i>{line.Limits}</i>");
        html.Raw("</td>");
        if (line.Beside is { } beside) html.Add($"<td>{beside}</td>");
        html.Add($"<td>{line.Words}");
        if (line.Remark.Length > 0) html.Add($"<small>{line.Remark}</small>");
        html.Raw("</td></tr>");
    }
}
