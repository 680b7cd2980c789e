using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>Which way y counts in the picture.</summary>
public enum YAxis
{
    /// <summary>From the top down, as pictures are stored.</summary>
    Down,

    /// <summary>From the bottom up.</summary>
    Up,
}

/// <summary>Which way the athlete runs in the picture.</summary>
public enum Travel
{
    /// <summary>Towards the right edge.</summary>
    Right,

    /// <summary>Towards the left edge; x is mirrored so that forward is positive.</summary>
    Left,
}

/// <summary>
/// From pixels to metres in the plane of the run. Lengths are taken back to the athlete's lane by (L − d)/L, and lengths along the run are stretched by 1/cos A when the camera
/// was not square. Positions count from the picture's corner (or below 0 when mirrored): only differences have a meaning.
/// </summary>
public sealed record ClipGeometry
{
    /// <summary>Scale of the calibrated plane.</summary>
    public required LengthScale Scale { get; init; }

    /// <summary>Which way y counts.</summary>
    public YAxis YAxis { get; init; } = YAxis.Down;

    /// <summary>Which way the athlete runs.</summary>
    public Travel Travel { get; init; } = Travel.Right;

    /// <summary>Height of the picture in pixels, so that a y counted down comes out above 0; null leaves it below 0.</summary>
    public double? PictureHeightPixels { get; init; }

    /// <summary>L, distance of the camera from the calibrated plane; needed when <see cref="Nearer"/> is not 0.</summary>
    public Length? CameraDistance { get; init; }

    /// <summary>d, how much nearer than the calibrated plane the athlete runs; negative for farther.</summary>
    public Length Nearer { get; init; }

    /// <summary>A, angle by which the camera is not square to the run.</summary>
    public Angle CameraAngle { get; init; }

    /// <summary>SD of one digitised coordinate in pixels; null when not known.</summary>
    public double? PointSdPixels { get; init; }

    /// <summary>Metres to a pixel along the run and upwards, all corrections in.</summary>
    /// <exception cref="ArgumentException">A lane offset without a camera distance.</exception>
    public (double Along, double Up) MetresPerPixel()
    {
        if (Nearer.Metres != 0 && CameraDistance is null)
            throw new ArgumentException($"The athlete runs {Nearer} off the calibrated plane; give the distance of the camera too, or 0 for the offset.");
        var lane = CameraDistance is { } distance ? 1 / Parallax.Magnification(distance, Nearer) : 1;
        var cosine = Parallax.Foreshortening(CameraAngle);
        var up = Scale.UprightMetresPerPixel(cosine) * lane;
        return (up / cosine, up);
    }

    /// <summary>The clip in metres, x forward, y up; gaps stay gaps. Calibration ends are left out.</summary>
    /// <param name="clock">Times of the frames.</param>
    /// <param name="tracks">Markers as digitised.</param>
    /// <param name="firstFrame">Frame number of the first sample.</param>
    /// <exception cref="ArgumentException">As for <see cref="DigitisedClip"/> and <see cref="MetresPerPixel"/>.</exception>
    public DigitisedClip ToMetres(FrameClock clock, IEnumerable<PixelTrack> tracks, int firstFrame = 0)
    {
        ArgumentNullException.ThrowIfNull(tracks);
        if (PointSdPixels is { } sd && !(sd >= 0 && double.IsFinite(sd)))
            throw new ArgumentException(FormattableString.Invariant($"SD of a digitised point must be 0 px or more; got {sd} px."));
        var (along, up) = MetresPerPixel();
        // One SD for both axes: the larger, when the camera angle stretches x.
        Length? pointSd = PointSdPixels is { } pixels ? Length.FromMetres(pixels * Math.Max(along, up)) : null;
        return new(clock, tracks.Where(t => t.Role.IsBody()).Select(t => InMetres(t, along, up)), firstFrame, pointSd, Scale.RelativeSd) { Rows = Rows(up) };
    }

    // With y counted up the height of the picture says where the top row is.
    private PictureRows? Rows(double up) => YAxis == YAxis.Down ? new(up * (PictureHeightPixels ?? 0), up) : PictureHeightPixels is { } height ? new(up * height, up) : null;

    private MarkerTrack InMetres(PixelTrack track, double along, double up)
    {
        double[] x = new double[track.Count], y = new double[track.Count];
        var forward = Travel == Travel.Right ? along : -along;
        for (var i = 0; i < x.Length; i++)
        {
            x[i] = forward * track.X[i];
            y[i] = YAxis == YAxis.Up ? up * track.Y[i] : up * ((PictureHeightPixels ?? 0) - track.Y[i]);
        }
        return new(track.Name, track.Role, x, y);
    }
}
