using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Blocks;

/// <summary>The head of a report: its title, the club, and one line on who was tested and when.</summary>
/// <param name="Title">Title of the report, for example <c>Testing day, 8 June 2026</c>.</param>
/// <param name="Club">Name of the club as the season gives it.</param>
/// <param name="Line">Who and when, for example <c>54 of 61 players tested, compared with 13 April</c>.</param>
public sealed class ReportHead(string Title, string Club, string Line) : ReportBlock
{
    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
        => html.Add($"<div class=\"hd\"><h1>{OutsideText.Label(Title)}</h1><p><b>{OutsideText.Label(Club)}</b> \u00b7 {Line}</p></div>");

    /// <inheritdoc/>
    public override string ToText() => $"{Title}\n{Club} \u00b7 {Line}";
}
