using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Clips;
using Analytics.Season.Columns;

namespace Analytics.Season.Settings;

/// <summary>Reads <c>video</c> of season.json.</summary>
internal static class VideoReader
{
    /// <summary>SD of reading an end of the calibration length where the season gives none, px; common practice, no source.</summary>
    private const double UsualEndSd = 1.5;

    /// <summary>The settings; those of a season without <c>video</c> are the defaults.</summary>
    public static VideoSettings Read(SettingsObject video)
    {
        var digitising = video.Number("digitising_sd_px", 0, 50);
        var settings = new VideoSettings
        {
            Rate = video.Number("rate_hz", RateLimits.Lowest, RateLimits.Highest) is { } hertz ? Frequency.FromHertz(hertz) : null,
            YAxis = video.Choice("y_axis", "down", "down", "up") is "up" ? YAxis.Up : YAxis.Down,
            PictureHeightPixels = video.Number("picture_height_px", 100, 20_000),
            ReadOut = video.Number("readout_ms", 0, 100) is { } ms ? Duration.FromMilliseconds(ms) : null,
            Markers = Markers(video),
            Calibration = Calibration(video, digitising),
            CameraDistance = video.Length("camera_distance", UnitSets.Gaps, 1, 200)?.Length,
            LaneOffset = video.Length("lane_offset", UnitSets.Gaps, -50, 50)?.Length ?? Length.Zero,
            DigitisingSdPixels = digitising,
            ContactWindow = Window(video),
        };
        Check(video, settings);
        video.NoteUnread();
        return settings;
    }

    private static Dictionary<string, MarkerRole> Markers(SettingsObject video)
    {
        var markers = new Dictionary<string, MarkerRole>(StringComparer.Ordinal);
        var map = video.Object("markers");
        foreach (var (name, role) in map.OtherWords(MarkerWords.Roles, MarkerWords.All))
            if (!markers.TryAdd(Words.Normal(name), role)) video.Faults.Add($"'video.markers' names '{CellText.Show(name)}' more than once; capitals, spaces and hyphens do not matter. Keep one.");
        return markers;
    }

    private static CalibrationSettings? Calibration(SettingsObject video, double? digitising)
    {
        var calibration = video.Object("calibration");
        if (!calibration.IsGiven) return null;
        string from = End(calibration, "from", MarkerRole.CalibrationFrom), to = End(calibration, "to", MarkerRole.CalibrationTo);
        if (from == to) video.Faults.Add($"'video.calibration' has the same marker '{CellText.Show(from)}' at both ends; name two.");
        var length = calibration.Length("length", UnitSets.Calibrations, 0.2, 30);
        if (length is null && !calibration.Has("length", UnitSets.Calibrations))
            video.Faults.Add("'video.calibration' has no length; write one of length_m, length_cm, length_in, length_ft, length_yd.");
        var sd = calibration.Number("end_point_sd_px", 0, 50) ?? digitising ?? UsualEndSd;
        calibration.NoteUnread();
        return length is { } size ? new CalibrationSettings(from, to, size.Length, size.Unit, sd) : null;
    }

    private static string End(SettingsObject calibration, string key, MarkerRole standard)
        => calibration.Has(key) ? Words.Normal(calibration.Text(key)) : MarkerWords.Word(standard);

    private static TargetWindow Window(SettingsObject video)
    {
        const string key = "contact_window_s";
        var numbers = video.Array(key);
        if (numbers.Count is 0) return TargetWindow.Usual;
        var seconds = numbers.Select(SettingsObject.Finite).ToList();
        if (seconds is [{ } first and >= 0.05, { } last and <= 5] && first < last) return new TargetWindow(Duration.FromSeconds(first), Duration.FromSeconds(last));
        video.Faults.Add($"'video.{key}' must be two rising numbers from 0.05 to 5, the earliest and the latest time: [0.40, 0.45]; got [{CellText.Show(string.Join(", ", numbers.Select(n => n.GetRawText())))}].");
        return TargetWindow.Usual;
    }

    private static void Check(SettingsObject video, VideoSettings settings)
    {
        if (settings.ReadOut is not null && settings.PictureHeightPixels is null && !video.Has("picture_height_px"))
            video.Faults.Add("'video.readout_ms' has no effect without 'video.picture_height_px'; add the height of the picture.");
        if (settings.LaneOffset.Metres is 0) return;
        if (settings.CameraDistance is not { } distance)
        {
            if (!video.Has("camera_distance", UnitSets.Gaps)) video.Faults.Add("'video.lane_offset' needs the distance of the camera; add camera_distance_m.");
        }
        else if (settings.LaneOffset.Metres >= distance.Metres)
        {
            video.Faults.Add($"'video.lane_offset' ({CellText.Number(settings.LaneOffset.Metres)} m nearer) puts the athlete at or behind the camera, {CellText.Number(distance.Metres)} m away; check both.");
        }
    }
}
