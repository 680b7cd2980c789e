using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.Charts;

/// <summary>A place in the plane of the run, in metres: forward and up.</summary>
/// <param name="X">Forward.</param>
/// <param name="Y">Up.</param>
public readonly record struct StickPoint(double X, double Y);

/// <summary>A part of the body between two points.</summary>
/// <param name="From">One end.</param>
/// <param name="To">Other end.</param>
/// <param name="Far">Whether it is on the side away from the camera, drawn thin and broken.</param>
public sealed record Stick(StickPoint From, StickPoint To, bool Far = false);

/// <summary>One posture.</summary>
/// <param name="Name">The moment, for example <c>Contact</c>.</param>
/// <param name="Words">The posture in words, for example <c>shin 42°, trunk 38°</c>: the alternative to the picture.</param>
/// <param name="Sticks">Parts of the body; none when the moment was not digitised.</param>
/// <param name="Head">Middle of the head; null when it was not digitised.</param>
public sealed record Posture(string Name, string Words, IReadOnlyList<Stick> Sticks, StickPoint? Head = null);

/// <summary>Postures of one repetition side by side, on one scale, drawn from the points; each with its words.</summary>
public sealed class StickFigures : ReportBlock
{
    private const double HeadRadius = 11;
    private const double Air = 14;

    /// <summary>Whose postures.</summary>
    public required string Title { get; init; }

    /// <summary>A short remark beside the title; may be empty.</summary>
    public string TitleNote { get; init; } = string.Empty;

    /// <summary>The postures in order of time.</summary>
    public required IReadOnlyList<Posture> Postures { get; init; }

    /// <summary>The same in numbers.</summary>
    public required DataTable Numbers { get; init; }

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        var pictures = new Markup();
        var (width, height) = (Extent(p => p.X), Extent(p => p.Y));
        foreach (var posture in Postures) WritePosture(pictures, posture, width, height);
        var id = StableId.Of("fig", Title + "\n" + pictures);
        html.Add($"<figure class=\"fig\" aria-labelledby=\"{id}\"><figcaption id=\"{id}\">{Title}");
        if (TitleNote.Length > 0) html.Add($" <small>{TitleNote}</small>");
        html.Add($"</figcaption><div class=\"fig-static sf\">{pictures}</div><details class=\"fig-table\"><summary>Numbers as a table</summary>");
        Numbers.WriteHtml(html);
        html.Raw("</details></figure>");
    }

    /// <inheritdoc/>
    public override string ToText() => Join([Title, .. Postures.Select(p => $"{p.Name}: {p.Words}"), Numbers.ToText()]);

    // The widest (tallest) posture sets the frame of all, so that they share one scale; in cm, so that one decimal is enough.
    private double Extent(Func<StickPoint, double> axis)
        => Postures.Select(p => Points(p).Select(axis).ToArray()).Where(v => v.Length > 0).Select(v => 100 * (v.Max() - v.Min())).DefaultIfEmpty(100).Max() + (2 * Air);

    private static IEnumerable<StickPoint> Points(Posture posture)
        => posture.Sticks.SelectMany(s => new[] { s.From, s.To }).Concat(posture.Head is { } head ? [head] : []).Where(p => LinearScale.CanDraw(p.X) && LinearScale.CanDraw(p.Y));

    private static void WritePosture(Markup html, Posture posture, double width, double height)
    {
        html.Add($"<div><h3>{posture.Name}</h3>");
        StickPoint[] points = [.. Points(posture)];
        if (points.Length > 0)
        {
            double left = 50 * (points.Min(p => p.X) + points.Max(p => p.X)) - (width / 2), ground = 100 * points.Min(p => p.Y);
            html.Add($"<svg viewBox=\"0 0 {width} {height}\" role=\"img\" aria-label=\"{posture.Name}: {posture.Words}\"><line class=\"g\" x2=\"{width}\" y1=\"{height - 4}\" y2=\"{height - 4}\"/>");
            foreach (var stick in posture.Sticks.OrderBy(s => s.Far ? 0 : 1))
                html.Raw(stick.Far ? "<line class=\"k far\"" : "<line class=\"k\"").Add($" x1=\"{X(stick.From)}\" y1=\"{Y(stick.From)}\" x2=\"{X(stick.To)}\" y2=\"{Y(stick.To)}\"/>");
            if (posture.Head is { } head) html.Add($"<circle class=\"k\" cx=\"{X(head)}\" cy=\"{Y(head)}\" r=\"{HeadRadius}\"/>");
            html.Raw("</svg>");

            double X(StickPoint p) => (100 * p.X) - left;
            double Y(StickPoint p) => height - 4 - ((100 * p.Y) - ground);
        }
        html.Add($"<p class=\"nt\">{posture.Words}</p></div>");
    }
}
