using Analytics.Notebooks.Look;
using static Analytics.Notebooks.Charts.Live.PlotFigure;

namespace Analytics.Notebooks.Charts.Live;

/// <summary>The live form of a strip table: rows from the top, the axis above them, words in columns at the right.</summary>
internal sealed class StripFigure
{
    private const double TopOfAxis = 42;
    private const double TopWithWindow = 60;
    private readonly LinearScale _scale;
    private readonly Axis _axis;
    private readonly IReadOnlyList<string> _names;
    private readonly List<object> _shapes = [];
    private readonly List<object> _words = [];

    /// <summary>An empty figure with its rows and axis.</summary>
    /// <param name="scale">The axis of the drawing, so that both forms agree.</param>
    /// <param name="axis">Words of the axis.</param>
    /// <param name="names">Names of the rows, from the top.</param>
    /// <param name="rowPixels">Height of a row.</param>
    /// <param name="window">A named window behind the rows; null for none.</param>
    /// <param name="longestName">Characters of a name beside the strip; a longer one ends in an ellipsis.</param>
    /// <param name="stripShare">Share of the width that the strip takes; the rest is for columns of text.</param>
    public StripFigure(LinearScale scale, Axis axis, IReadOnlyList<string> names, int rowPixels, Window? window, int longestName, double stripShare)
    {
        (_scale, _axis, _names) = (scale, axis, names);
        var top = window is null ? TopOfAxis : TopWithWindow;
        Figure = new PlotFigure((names.Count * rowPixels) + top + 8, PlotText.Margin(names, 13, longestName), 4, top, 8);
        WriteAxes(stripShare, longestName, window is null ? 4 : 22);
        if (window is not null) WriteWindow(window);
    }

    public PlotFigure Figure { get; }

    /// <summary>A number as text for pointing at, with its unit.</summary>
    public string Pointed => $"%{{x:{(_scale.Signed ? "+" : string.Empty)}.{_axis.Decimals}f}}{PlotText.Escape(Figures.Unit(_axis.Unit))}<extra></extra>";

    /// <summary>Adds marks.</summary>
    public StripFigure Marks(IEnumerable<double?> x, IEnumerable<double?> y, IReadOnlyDictionary<string, object> marker, string hover, params IEnumerable<(string, object?)> more)
    {
        Figure.Scatter([
            ("mode", "markers"), ("x", PlotText.Numbers(x, _axis.Decimals + 1)), ("y", PlotText.Numbers(y, 2)),
            ("marker", marker), ("hovertemplate", hover), ("cliponaxis", false), .. more]);
        return this;
    }

    /// <summary>Adds text to the column that ends at a place between 0 and 100 of the room for text.</summary>
    /// <param name="place">Where the text ends.</param>
    /// <param name="rows">Rows that get a text.</param>
    /// <param name="text">A text for each row, or one for all.</param>
    /// <param name="colour">Colour of the text.</param>
    public StripFigure Column(int place, IReadOnlyCollection<int> rows, object text, string colour)
    {
        Figure.Scatter(
            ("mode", "text"), ("x", Enumerable.Repeat(place, rows.Count).ToArray()), ("y", rows.ToArray()), ("xaxis", "x2"), ("text", text),
            ("textposition", "middle left"), ("textfont", Node(("color", colour))), ("hoverinfo", "skip"), ("cliponaxis", false));
        return this;
    }

    /// <summary>Adds the head of a column.</summary>
    /// <param name="place">Where the column ends.</param>
    /// <param name="words">Its head.</param>
    /// <param name="above">Pixels above the line of the tick labels, for a column so narrow that its head would meet the last of them.</param>
    public StripFigure Head(int place, string words, long above = 0)
    {
        _words.Add(Node(
            ("text", PlotText.Escape(words)), ("xref", "x2"), ("x", place), ("xanchor", "right"), ("y", 1L), ("yref", "paper"), ("yanchor", "bottom"),
            ("yshift", above), ("showarrow", false), ("font", Font(12, Palette.Muted))));
        Figure.Layout("annotations", _words.ToArray());
        return this;
    }

    /// <summary>Adds the line of no change.</summary>
    public StripFigure Zero()
    {
        _shapes.Add(Node(("type", "line"), ("layer", "below"), ("yref", "paper"), ("y0", 0L), ("y1", 1L), ("x0", 0L), ("x1", 0L), ("line", Node(("width", 1L), ("color", Palette.Muted)))));
        Figure.Layout("shapes", _shapes.ToArray());
        return this;
    }

    private void WriteWindow(Window window)
    {
        _shapes.Add(Node(
            ("type", "rect"), ("layer", "below"), ("yref", "paper"), ("y0", 0L), ("y1", 1L), ("x0", window.Low), ("x1", window.High), ("fillcolor", Palette.Band), ("line", Node(("width", 0L)))));
        _words.Add(Node(("text", PlotText.Escape(window.Label)), ("x", (window.Low + window.High) / 2), ("y", 1L), ("yref", "paper"), ("yanchor", "bottom"), ("yshift", 18L), ("showarrow", false), ("font", Font(12, Palette.Muted))));
        Figure.Layout("annotations", _words.ToArray());
        Figure.Layout("shapes", _shapes.ToArray());
    }

    private void WriteAxes(double stripShare, int longestName, long standoff)
    {
        var arrow = _axis.Better switch
        {
            Better.Higher => $"{PlotText.Escape(_axis.Title)}    <b>{_axis.Arrow}</b>",
            Better.Lower => $"<b>{_axis.Arrow}</b>    {PlotText.Escape(_axis.Title)}",
            _ => PlotText.Escape(_axis.Title),
        };
        Figure.Layout("xaxis", Axis(AxisTicks.Of(_scale), arrow, standoff, ("domain", new object[] { 0L, stripShare }), ("side", "top"), ("fixedrange", true)));
        Figure.Layout("xaxis2", Node(("domain", new object[] { stripShare, 1L }), ("range", new object[] { 0L, 100L }), ("visible", false), ("fixedrange", true)));
        Figure.Layout("yaxis", Node(
            ("range", new[] { _names.Count - 0.5, -0.5 }), ("tickvals", Enumerable.Range(0, _names.Count).ToArray()), ("ticktext", _names.Select(n => PlotText.Label(n, longestName)).ToArray()),
            ("ticks", string.Empty), ("showgrid", false), ("zeroline", false), ("automargin", false), ("fixedrange", true), ("tickfont", Font(13, Palette.Ink))));
    }
}
