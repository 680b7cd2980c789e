using System.Globalization;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>One row of a strip table.</summary>
internal sealed record StripRow(string Name, string Group, Markup Marks, Markup Numbers, string Words, string Note, Tone Tone);

/// <summary>
/// A chart as a table: the name, a drawn strip, the numbers and the words of each row. All strips share one axis.
/// The table needs no script, reads aloud as a table, and in a narrow place its rows become cards.
/// </summary>
internal sealed class StripTable(LinearScale scale, Axis axis)
{
    private const double Narrowest = 280;

    // A longer name takes several lines, so that one name does not narrow every strip.
    private const int LongestLine = 30;
    private const int LongestRemark = 160;

    public required string NameHead { get; init; }

    public required string NumbersHead { get; init; }

    public string WordsHead { get; init; } = string.Empty;

    public Window? Window { get; init; }

    public bool ZeroLine { get; init; }

    /// <summary>A panel keeps its columns in a narrow place; otherwise rows become cards.</summary>
    public bool Panel { get; init; }

    /// <summary>A further class of the table; empty for none.</summary>
    public string RowClass { get; init; } = string.Empty;

    public void Write(Markup html, IEnumerable<StripRow> rows)
    {
        html.Add($"<table class=\"st {(Panel ? "pn" : "wd")}{(RowClass.Length == 0 ? string.Empty : " " + RowClass)}\" style=\"--g:{new Markup().Raw(Ground())}\"><thead><tr><th scope=\"col\">{NameHead}</th><th scope=\"col\">");
        WriteAxis(html);
        html.Add($"</th><th scope=\"col\">{NumbersHead}</th>");
        if (WordsHead.Length > 0) html.Add($"<th scope=\"col\">{WordsHead}</th>");
        html.Raw("</tr></thead><tbody>");
        foreach (var row in rows) WriteRow(html, row);
        html.Raw("</tbody></table>");
    }

    private void WriteRow(Markup html, StripRow row)
    {
        var name = OutsideText.Label(row.Name);
        html.Add($"<tr{ToneClass.Attribute(row.Tone)}><th scope=\"row\"").Raw(name.Length + row.Group.Length > LongestLine ? " class=\"lg\">" : ">").Add($"{name}");
        if (row.Group.Length > 0) html.Add($" <small>{OutsideText.Cut(row.Group, LongestLine)}</small>");
        html.Add($"</th><td><svg>{row.Marks}</svg></td><td>{row.Numbers}</td>");
        if (WordsHead.Length > 0)
        {
            html.Raw(row.Words.Length > LongestLine ? "<td class=\"lg\">" : "<td>").Add($"{OutsideText.Cut(row.Words, LongestRemark)}");
            if (row.Note.Length > 0) html.Add($"<small>{OutsideText.Cut(row.Note, LongestRemark)}</small>");
            html.Raw("</td>");
        }
        html.Raw("</tr>");
    }

    private void WriteAxis(Markup html)
    {
        html.Raw(axis.Better == Better.Lower ? "<div class=\"ax lo\">" : "<div class=\"ax\">");
        if (axis.Better == Better.Lower) html.Add($"<b>{axis.Arrow}</b><span>{axis.Title}</span>");
        else html.Add($"<span>{axis.Title}</span>");
        if (axis.Better == Better.Higher) html.Add($"<b>{axis.Arrow}</b>");
        html.Add($"</div><svg height=\"{(Window is null ? 16 : 32)}\" aria-hidden=\"true\">");
        if (Window is not null) WriteWindowName(html, Window);
        foreach (var tick in scale.Ticks)
            html.Add($"<text class=\"t mid\" x=\"{scale.Percent(tick)}%\" y=\"{(Window is null ? 11 : 27)}\">{scale.Label(tick)}</text>");
        html.Raw("</svg>");
    }

    // The name stands over the middle of its window unless it would run out of the narrowest strip there.
    private void WriteWindowName(Markup html, Window window)
    {
        var middle = scale.Percent((window.Low + window.High) / 2);
        var half = TextWidth.Of(window.Label, 12) / 2 / Narrowest * 100;
        if (middle < half) html.Add($"<text class=\"t\" x=\"0\" y=\"11\">{window.Label}</text>");
        else if (middle > 100 - half) html.Add($"<text class=\"t end\" x=\"100%\" y=\"11\">{window.Label}</text>");
        else html.Add($"<text class=\"t mid\" x=\"{middle}%\" y=\"11\">{window.Label}</text>");
    }

    // Grid, zero line and window as the ground of the strip column: written once, not once per row.
    private string Ground()
    {
        var layers = new List<string>();
        if (ZeroLine) layers.Add(Line("#56616e", scale.Percent(0)));
        layers.AddRange(scale.Ticks.Where(t => !ZeroLine || Math.Abs(t) > 1e-12).Select(t => Line("#d9dee4", scale.Percent(t))));
        if (Window is not null)
        {
            var (from, to) = (Math.Max(0, scale.Percent(Window.Low)), Math.Min(100, scale.Percent(Window.High)));
            layers.Add(string.Create(CultureInfo.InvariantCulture, $"linear-gradient(90deg,#0000 {from:0.##}%,{Palette.Band} {from:0.##}% {to:0.##}%,#0000 {to:0.##}%)"));
        }
        return string.Join(',', layers);
    }

    private static string Line(string colour, double percent)
        => string.Create(CultureInfo.InvariantCulture, $"linear-gradient({colour},{colour}) {percent:0.##}% 0/1px 100% no-repeat");
}
