using Analytics.Simulation.Clips.Motion;

namespace Analytics.Simulation.Clips.Camera;

/// <summary>
/// A camera square to the run: what lies in the plane of the calibration stick is drawn at a fixed scale, what is nearer by d larger by L/(L − d) about the axis. Rows are exposed one after another
/// over the read-out time. No distortion of the lens, no blur.
/// </summary>
public sealed record PinholeCamera
{
    public const double WidthPixels = 1920, HeightPixels = 1080;

    /// <summary>Pixels a metre in the plane of the stick.</summary>
    public double PixelsPerMetre { get; init; } = 420;

    /// <summary>L.</summary>
    public double DistanceMetres { get; init; } = 12;

    /// <summary>Height of the axis over the ground.</summary>
    public double HeightMetres { get; init; } = 1.15;

    /// <summary>Where along the run the axis points; the runner's centre of mass starts at 0.</summary>
    public double AxisMetres { get; init; } = 0.45;

    /// <summary>d: how much nearer than the stick the runner is; negative is farther.</summary>
    public double NearerMetres { get; init; }

    /// <summary>Time from the first row to the last; 0 exposes all at once.</summary>
    public double ReadOutSeconds { get; init; }

    /// <summary>Runs to the left in the picture.</summary>
    public bool ToTheLeft { get; init; }

    /// <summary>Column and row, from the top left, of a place in the runner's plane (or in the stick's).</summary>
    public (double X, double Y) Draw(Point at, bool stick = false)
    {
        var scale = PixelsPerMetre * (stick ? 1 : DistanceMetres / (DistanceMetres - NearerMetres));
        var along = scale * (at.X - AxisMetres) * (ToTheLeft ? -1 : 1);
        return ((WidthPixels / 2) + along, (HeightPixels / 2) - (scale * (at.Y - HeightMetres)));
    }

    /// <summary>Time after the beginning of the frame at which a row is exposed.</summary>
    public double Delay(double row) => ReadOutSeconds * Math.Clamp(row, 0, HeightPixels) / HeightPixels;

    /// <summary>Where a moving point is drawn in a frame that began at a time: its row and the moment it is exposed fit each other.</summary>
    public (double X, double Y) Draw(Func<double, Point> path, double frameSeconds)
    {
        var drawn = Draw(path(frameSeconds));
        if (ReadOutSeconds == 0) return drawn;
        // A point moves by far less than a row while a row is read, so this settles at once.
        for (var i = 0; i < 4; i++) drawn = Draw(path(frameSeconds + Delay(drawn.Y)));
        return drawn;
    }
}
