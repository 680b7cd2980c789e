using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Season.Cells;

namespace Analytics.Season.Clips;

/// <summary>What is worth saying of points that were kept.</summary>
internal static class ClipRemarks
{
    private static readonly (string Measure, MarkerRole[] Needs)[] Measures =
    [
        ("lean of the shin", [MarkerRole.Knee, MarkerRole.Ankle]),
        ("lean of the trunk", [MarkerRole.Hip, MarkerRole.Shoulder]),
        ("angle of the knee", [MarkerRole.Hip, MarkerRole.Knee, MarkerRole.Ankle]),
        ("angle of the hip", [MarkerRole.Shoulder, MarkerRole.Hip, MarkerRole.Knee]),
    ];

    /// <summary>The remarks.</summary>
    public static IEnumerable<string> Of(ClipBody body, IReadOnlyList<ContactReading> readings)
    {
        if (Missing(body) is { } missing) yield return missing;
        if (Gaps(body) is { } gaps) yield return gaps;
        var outside = readings.SelectMany(r => new[] { r.FirstMovement.Frame, r.Contact.Frame }).Where(f => f < body.First || f > body.Last).Distinct().Order().ToList();
        if (outside.Count > 0)
            yield return $"The points cover frames {body.First} to {body.Last}, but there is an event at frame {string.Join(" and ", outside.Take(3))}; what is measured there is left out.";
    }

    private static string? Missing(ClipBody body)
    {
        var lost = Measures.Where(m => m.Needs.Any(n => body.Find(n) is null)).ToList();
        if (lost.Count is 0) return null;
        var markers = lost.SelectMany(m => m.Needs).Distinct().Where(n => body.Find(n) is null).Select(n => n.InWords());
        return $"There is no marker for {string.Join(", ", markers)}; not measured without: {string.Join(", ", lost.Select(m => m.Measure))}.";
    }

    private static string? Gaps(ClipBody body)
    {
        var gaps = body.Markers.SelectMany(Gaps).ToList();
        if (gaps.Count is 0) return null;
        var shown = gaps.Take(4).Select(g => $"'{CellText.Show(g.Marker)}' {(g.From == g.To ? $"frame {g.From}" : $"frames {g.From} to {g.To}")}");
        return $"{(gaps.Count is 1 ? "1 gap" : $"{gaps.Count} gaps")} in the points: {string.Join(", ", shown)}{(gaps.Count > 4 ? $" and {gaps.Count - 4} more" : "")}.";
    }

    /// <summary>Frames between the first and the last point of a marker that have none.</summary>
    private static List<(string Marker, int From, int To)> Gaps(PixelMarker marker)
    {
        var gaps = new List<(string, int, int)>();
        var last = -1;
        for (var i = 0; i < marker.X.Length; i++)
        {
            if (double.IsNaN(marker.X[i])) continue;
            if (last >= 0 && i > last + 1) gaps.Add((marker.Points.Written, marker.First + last + 1, marker.First + i - 1));
            last = i;
        }

        return gaps;
    }
}
