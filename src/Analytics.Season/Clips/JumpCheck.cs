using System.Globalization;
using Analytics.Metrics.Motion;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Clips;

/// <summary>Markers that move as no body does. Single frames out of line lose their point; a marker that jumps for good, or often, spoils the clip.</summary>
internal static class JumpCheck
{
    /// <summary>Smallest jump told, m; what is smaller, the filter takes care of. Common practice, no source.</summary>
    private const double Smallest = 0.10;

    /// <summary>More than any limb accelerates, m/s²; common practice, no source.</summary>
    private const double Hardest = 600;

    /// <summary>Share of a marker's frames that may be out of line.</summary>
    private const double MostSpikes = 0.1;

    /// <summary>The jumps that count.</summary>
    public static IReadOnlyList<MarkerJump> Find(DigitisedClip clip)
    {
        var interval = clip.Clock.Interval.Seconds;
        var least = Math.Max(Smallest, Hardest * interval * interval);
        return [.. new JumpFinder().Find(clip).Where(j => j.Size.Metres >= least)];
    }

    /// <summary>A marker that spoils the clip; null when there is none.</summary>
    public static CellFault? Spoilt(IReadOnlyList<MarkerJump> jumps, ClipBody body)
    {
        if (jumps.FirstOrDefault(j => j.Kind == JumpKind.Step) is { } step)
            return new CellFault(body.Find(step.Role)!.Points.Head, CellText.Show(step.Marker), Text(step, " and stays there"), "Look whether two markers were swapped from that frame on, and digitise it again.");
        var often = jumps.GroupBy(j => j.Role).FirstOrDefault(g => g.Count() > MostSpikes * body.Find(g.Key)!.Count);
        if (often is null) return null;
        return new CellFault(body.Find(often.Key)!.Points.Head, CellText.Show(often.First().Marker), Text(often.First(), string.Create(CultureInfo.InvariantCulture, $", and in {often.Count() - 1} more of its {body.Find(often.Key)!.Count} frames")), "Digitise that marker again, or take it out of the file.");
    }

    /// <summary>What is said of a point that is left out.</summary>
    public static CellFault LeftOut(MarkerJump jump, MarkerPoints marker, double x, double y)
        => new(marker.Head, string.Create(CultureInfo.InvariantCulture, $"{x:0.##}, {y:0.##}"), Text(jump, "; the point was left out"), "Digitise that frame again, or leave it empty. If it is right, write yes in a column 'checked' of contact.");

    private static string Text(MarkerJump jump, string more)
        => string.Create(CultureInfo.InvariantCulture, $"marker '{CellText.Show(jump.Marker)}' jumps {jump.Size.Centimetres:0} cm at frame {jump.Frame}{more}");
}
