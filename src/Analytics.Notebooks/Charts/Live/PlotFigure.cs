using Analytics.Notebooks.Look;
using Plotly.NET;

namespace Analytics.Notebooks.Charts.Live;

/// <summary>
/// A chart as Plotly data, small enough to travel in a page by the dozen: no template, rounded numbers,
/// text that can neither end the script element nor pass for Plotly's text tags.
/// </summary>
internal sealed class PlotFigure
{
    private readonly List<Trace> _traces = [];
    private readonly Layout _layout = new();

    // The stock template costs 130 ms and 8 kB a chart. What a chart needs it says itself, so that it looks the same
    // whatever template a page sets.
    static PlotFigure() => Defaults.DefaultTemplate = new Template();

    /// <summary>A height and margins in pixels; the width follows the page.</summary>
    public PlotFigure(double height, double left, double right, double top, double bottom)
    {
        Layout("height", (long)Math.Round(height));
        Layout("showlegend", false);
        Layout("margin", Node(("l", (long)left), ("r", (long)right), ("t", (long)top), ("b", (long)bottom)));
    }

    /// <summary>An object of named values; those that are null are left out.</summary>
    public static Dictionary<string, object> Node(params IEnumerable<(string Name, object? Value)> values)
        => values.Where(v => v.Value is not null).ToDictionary(v => v.Name, v => v.Value!);

    /// <summary>An axis with words at given places and no room of its own: the margins are ours.</summary>
    public static Dictionary<string, object> Axis(AxisTicks ticks, string title, long standoff, params IEnumerable<(string Name, object? Value)> more) => Node([
        ("range", PlotText.Numbers([ticks.Scale.Low, ticks.Scale.High], ticks.Scale.Decimals + 2)), ("tickvals", PlotText.Numbers(ticks.Labels.Select(l => (double?)l.Value), 9)), ("ticktext", ticks.Labels.Select(l => l.Text).ToArray()),
        ("tickfont", Font(12, Palette.Muted)), ("title", title.Length == 0 ? null : Node(("text", title), ("standoff", standoff), ("font", Font(13, Palette.Muted)))),
        ("ticks", string.Empty), ("gridcolor", Palette.Rule), ("zeroline", false), ("automargin", false), ("tickangle", 0L), .. more]);

    /// <summary>Size and colour of words.</summary>
    public static Dictionary<string, object> Font(long size, string colour) => Node(("size", size), ("color", colour));

    /// <summary>Adds a scatter trace.</summary>
    public PlotFigure Scatter(params IEnumerable<(string Name, object? Value)> values)
    {
        var trace = new Trace2D("scatter");
        foreach (var (name, value) in values)
            if (value is not null) trace.SetProperty(name, value);
        _traces.Add(trace);
        return this;
    }

    /// <summary>Sets a value of the layout.</summary>
    public PlotFigure Layout(string name, object value)
    {
        _layout.SetProperty(name, value);
        return this;
    }

    /// <summary>The chart as a Plotly.NET object.</summary>
    public GenericChart Chart
    {
        get
        {
            var config = new Config();
            config.SetProperty("displayModeBar", false);
            config.SetProperty("responsive", true);
            return GenericChart.setConfig(config, GenericChart.setLayout(_layout, GenericChart.ofTraceObjects(false, _traces)));
        }
    }

    /// <summary>Data, layout and config as JSON that is safe inside a script element.</summary>
    public string Json => GenericChart.toJson(Chart).Replace("<", "\\u003c", StringComparison.Ordinal);
}
