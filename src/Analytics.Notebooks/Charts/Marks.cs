using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>
/// The marks of the chart grammar. Places along a strip are percent of its width, so a strip fits any screen while
/// its marks and words keep their size. Height is measured from the middle of the row, where a mark stands unless told.
/// </summary>
internal static class Marks
{
    /// <summary>A player; stands inside <see cref="Dots"/>.</summary>
    public static Markup Dot(double percent, double y)
        => y == 0 ? new Markup().Add($"<circle cx=\"{percent}%\" r=\"3.3\"/>") : new Markup().Add($"<circle cx=\"{percent}%\" cy=\"{y}\" r=\"3.3\"/>");

    public static Markup Dots(params IEnumerable<Markup> dots)
    {
        var group = new Markup().Raw("<g class=\"d\">");
        foreach (var dot in dots) group.Add(dot);
        return group.Raw("</g>");
    }

    public static Markup Middle(double percent, double top, double bottom)
        => new Markup().Add($"<line class=\"m\" x1=\"{percent}%\" x2=\"{percent}%\" y1=\"{top}\" y2=\"{bottom}\"/>");

    public static Markup Ring(double percent, double y) => new Markup().Add($"<circle class=\"r\" cx=\"{percent}%\" cy=\"{y}\" r=\"3.6\"/>");

    public static Markup Span(double from, double to) => new Markup().Add($"<line x1=\"{from}%\" x2=\"{to}%\"/>");

    public static Markup Span(double from, double to, double y) => new Markup().Add($"<line x1=\"{from}%\" x2=\"{to}%\" y1=\"{y}\" y2=\"{y}\"/>");

    public static Markup Diamond(double percent) => new Markup().Add($"<svg x=\"{percent}%\"><path d=\"M-6 0 0-6 6 0 0 6z\"/></svg>");

    public static Markup Hollow(double percent) => new Markup().Add($"<circle cx=\"{percent}%\" r=\"4.2\"/>");

    public static Markup Small(double percent) => new Markup().Add($"<circle class=\"s\" cx=\"{percent}%\" r=\"3\"/>");

    /// <summary>A mark on its own in a line of text, for a key.</summary>
    public static Markup Key(Markup mark, string words)
        => new Markup().Add($"<span><svg width=\"18\" height=\"1\" aria-hidden=\"true\">{mark}</svg>{words}</span>");
}
