using System.Net;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.OnTrial;

namespace Analytics.Notebooks.Charts.Live;

/// <summary>Text and numbers as Plotly takes them.</summary>
internal static class PlotText
{
    /// <summary>Longest label beside a chart; a longer one ends in an ellipsis.</summary>
    public const int LongestLabel = 28;

    /// <summary>A label: short, and escaped because Plotly reads some tags and entities in text.</summary>
    public static string Label(string? text, int longest = LongestLabel) => Escape(TrialMark.Cut(OutsideText.Label(text), longest));

    /// <summary>
    /// Text with nothing left that Plotly would read as a tag, an entity or a template. A quote goes by its number: Plotly
    /// knows few entities by name and shows the others as they are written.
    /// </summary>
    public static string Escape(string text)
        => WebUtility.HtmlEncode(OutsideText.Visible(text)).Replace("&quot;", "&#34;", StringComparison.Ordinal).Replace("%{", "%&#123;", StringComparison.Ordinal).Replace("$", "&#36;", StringComparison.Ordinal);

    /// <summary>Width of the longest label, for a margin; bounded, since long labels are cut.</summary>
    public static double Margin(IEnumerable<string> labels, double fontPixels, int longest = LongestLabel)
        => labels.Select(l => TextWidth.Of(TrialMark.Cut(OutsideText.Label(l), longest), fontPixels)).DefaultIfEmpty(0).Max() * 0.92 + 12;

    /// <summary>Numbers rounded for drawing; what cannot be drawn becomes a gap.</summary>
    public static object?[] Numbers(IEnumerable<double?> values, int decimals)
        => [.. values.Select(v => v is { } number && LinearScale.CanDraw(number) ? Number(number, decimals) : null)];

    /// <summary>A number rounded for drawing; whole ones without a decimal point.</summary>
    public static object Number(double value, int decimals)
    {
        var rounded = Math.Round(value, Math.Clamp(decimals, 0, 12));
        return rounded == Math.Truncate(rounded) && Math.Abs(rounded) < 1e15 ? (object)(long)rounded : rounded;
    }
}
