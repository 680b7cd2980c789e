using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Season;

/// <summary>How the clips of a season were filmed and digitised, from <c>video</c> of season.json.</summary>
public sealed record VideoSettings
{
    /// <summary>Frames a second of a clip whose row names no rate; null when the season sets none.</summary>
    public Frequency? Rate { get; init; }

    /// <summary>Which way y counts in the clip files.</summary>
    public YAxis YAxis { get; init; } = YAxis.Down;

    /// <summary>Height of the picture in pixels; null when not known.</summary>
    public double? PictureHeightPixels { get; init; }

    /// <summary>Time in which the camera reads a picture from the first row to the last; null when not known.</summary>
    public Duration? ReadOut { get; init; }

    /// <summary>Landmark of each marker name, the names in lower case with underscores. The words of the landmarks themselves need no entry.</summary>
    public IReadOnlyDictionary<string, MarkerRole> Markers { get; init; } = new Dictionary<string, MarkerRole>();

    /// <summary>The length of known size in the picture; null when none is set, and then points cannot be used.</summary>
    public CalibrationSettings? Calibration { get; init; }

    /// <summary>Distance of the camera from the calibrated plane; null when not known.</summary>
    public Length? CameraDistance { get; init; }

    /// <summary>How much nearer to the camera than the calibrated plane the athlete runs; negative for farther.</summary>
    public Length LaneOffset { get; init; }

    /// <summary>SD of one digitised coordinate in pixels; null when not known.</summary>
    public double? DigitisingSdPixels { get; init; }

    /// <summary>The time into contact the drill asks for.</summary>
    public TargetWindow ContactWindow { get; init; } = TargetWindow.Usual;

    /// <summary>The camera's rolling shutter; null when its read-out time is not known.</summary>
    public RollingShutter? Shutter => ReadOut is { } time && PictureHeightPixels is { } height ? new RollingShutter(time, height) : null;
}

/// <summary>A length of known size in the picture.</summary>
/// <param name="From">Marker at one end, in lower case with underscores.</param>
/// <param name="To">Marker at the other end.</param>
/// <param name="Length">Its size.</param>
/// <param name="Unit">Unit its size was typed in.</param>
/// <param name="EndPointSdPixels">SD with which one end is read, in pixels.</param>
public sealed record CalibrationSettings(string From, string To, Length Length, Unit Unit, double EndPointSdPixels);
