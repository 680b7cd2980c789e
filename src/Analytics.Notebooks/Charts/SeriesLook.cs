using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>How series differ: by colour, and by dash or shape, never by colour alone.</summary>
internal static class SeriesLook
{
    /// <summary>Series that can be told apart; later ones look like the last.</summary>
    public const int Most = 5;

    /// <summary>The series drawn in the colour of text.</summary>
    public const int Ink = 2;

    private static readonly string[] Shapes = ["M-4 0a4 4 0 1 0 8 0a4 4 0 1 0-8 0z", "M-5.5 0 0-5.5 5.5 0 0 5.5z", "M-4-4h8v8h-8z", "M0-5.5 5 4h-10z", "M0 5.5 5-4h-10z"];

    private static readonly string[] PlotlyDashes = ["solid", "dash", "dot", "dashdot", "longdash"];

    private static readonly string[] PlotlySymbols = ["circle", "diamond", "square", "triangle-up", "triangle-down"];

    public static int Index(int series) => Math.Min(series, Most - 1);

    /// <summary>Outline of the mark about its middle.</summary>
    public static string Shape(int series) => Shapes[Index(series)];

    public static string Colour(int series) => Palette.Series[Index(series)];

    public static string Dash(int series) => PlotlyDashes[Index(series)];

    public static string Symbol(int series) => PlotlySymbols[Index(series)];

    /// <summary>Writes the key of a chart.</summary>
    public static void WriteKey(Markup html, params IEnumerable<Markup> entries)
    {
        html.Raw("<p class=\"key\">");
        foreach (var entry in entries) html.Add(entry);
        html.Raw("</p>");
    }

    /// <summary>A line of the key: a piece of the line with its mark.</summary>
    public static Markup Key(int series, string name, bool line, bool mark)
    {
        var sample = new Markup();
        if (line) sample.Add($"<line class=\"c{Index(series)}\" x1=\"0\" x2=\"26\"/>");
        if (mark) sample.Add($"<svg x=\"13\"><path class=\"p{Index(series)}\" d=\"{Shape(series)}\"/></svg>");
        return new Markup().Add($"<span><svg width=\"26\" height=\"1\" aria-hidden=\"true\">{sample}</svg>{OutsideText.Label(name)}</span>");
    }
}
