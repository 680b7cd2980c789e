using Analytics.Metrics.Motion;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Clips;

/// <summary>Which marker of a file stands for which landmark.</summary>
internal sealed class MarkerMap
{
    private readonly List<string> unmapped = [];

    /// <summary>The markers that stand for something, by landmark.</summary>
    public Dictionary<MarkerRole, MarkerPoints> Roles { get; } = [];

    /// <summary>What makes the map unusable; null when nothing does.</summary>
    public CellFault? Fault { get; private set; }

    /// <summary>A remark on markers that stand for nothing; null when there are none.</summary>
    public string? Remark { get; private set; }

    /// <summary>Maps the markers of a file.</summary>
    public static MarkerMap Of(ClipPoints points, VideoSettings video)
    {
        var map = new MarkerMap();
        foreach (var (name, marker) in points.Markers) map.Add(name, marker, video);
        map.Fault ??= Missing(map.Roles, video, points);
        if (map.unmapped.Count > 0) map.Remark = Say(map.unmapped, points, video);
        return map;
    }

    private void Add(string name, MarkerPoints marker, VideoSettings video)
    {
        if (RoleOf(name, video) is not { } role) unmapped.Add(name);
        else if (!Roles.TryAdd(role, marker))
            Fault ??= new CellFault(marker.Head, CellText.Show(marker.Written), $"the markers '{CellText.Show(Roles[role].Written)}' and '{CellText.Show(marker.Written)}' both stand for the {role.InWords()}", "Take one of them out of the file, or correct \"markers\" under \"video\" in season.json.");
    }

    private static MarkerRole? RoleOf(string name, VideoSettings video)
    {
        if (video.Calibration is { } ends)
        {
            if (name == ends.From) return MarkerRole.CalibrationFrom;
            if (name == ends.To) return MarkerRole.CalibrationTo;
        }

        return video.Markers.TryGetValue(name, out var role) ? role : MarkerWords.Roles.Find(name);
    }

    private static CellFault? Missing(Dictionary<MarkerRole, MarkerPoints> roles, VideoSettings video, ClipPoints points)
    {
        var there = string.Join(", ", points.Markers.Values.Take(12).Select(m => CellText.Show(m.Written)));
        if (video.Calibration is not { } ends)
            return new CellFault("", "", "season.json has no calibration length, so pixels cannot become metres", "Add \"calibration\" under \"video\" in season.json: the two markers at its ends, and length_m, length_cm, length_in, length_ft or length_yd.");
        string? end = Has(MarkerRole.CalibrationFrom) ? Has(MarkerRole.CalibrationTo) ? null : ends.To : ends.From;
        if (end is not null)
            return new CellFault("", "", $"the marker '{CellText.Show(end)}', an end of the calibration length, has no point; markers of the file: {there}", $"Digitise both ends in at least one frame{(NearWord.Of(end, points.Markers.Keys) is { } near ? $" (did you mean {CellText.Show(near)}?)" : "")}, or correct \"calibration\" in season.json.");
        return roles.Any(r => r.Key.IsBody() && r.Value.Points.Count > 0)
            ? null
            : new CellFault("", "", $"no marker stands for a landmark of the body; markers of the file: {there}", "Name the landmark of each marker in \"markers\" under \"video\" in season.json.");

        bool Has(MarkerRole role) => roles.TryGetValue(role, out var marker) && marker.Points.Count > 0;
    }

    private static string Say(List<string> names, ClipPoints points, VideoSettings video)
    {
        var known = MarkerWords.All.Concat(video.Markers.Keys).ToList();
        var shown = names.Take(8).Select(n => $"'{CellText.Show(points.Markers[n].Written)}'{(NearWord.Of(n, known) is { } near ? $" (did you mean {near}?)" : "")}");
        var more = names.Count > 8 ? $" and {names.Count - 8} more" : "";
        return $"Markers that stand for no landmark, their {names.Sum(n => points.Markers[n].Points.Count)} points not used: {string.Join(", ", shown)}{more}. Name their landmarks in \"markers\" under \"video\" in season.json if you want them.";
    }
}
