using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// Speed and acceleration of one marker by frame, by central differences inside its pieces; blank at their ends. Standard errors count digitising error after the track's filter; the
/// error of the scale comes on top and moves all of them by one factor.
/// </summary>
public sealed class MarkerMotion
{
    private readonly Length? pointSd;
    private readonly Frequency rate;

    private MarkerMotion(MarkerTrack track, DigitisedClip clip)
    {
        Track = track;
        (pointSd, rate) = (clip.PointSd, clip.Clock.Rate);
        var step = clip.Clock.Interval;
        VelocityX = new BlankSeries(CentralDifferences.VelocityByPiece(track.X, track.Pieces, step));
        VelocityY = new BlankSeries(CentralDifferences.VelocityByPiece(track.Y, track.Pieces, step));
        AccelerationX = new BlankSeries(CentralDifferences.AccelerationByPiece(track.X, track.Pieces, step));
        AccelerationY = new BlankSeries(CentralDifferences.AccelerationByPiece(track.Y, track.Pieces, step));
    }

    /// <summary>The marker.</summary>
    public MarkerTrack Track { get; }

    /// <summary>Forward speed in m/s by sample.</summary>
    public IReadOnlyList<double?> VelocityX { get; }

    /// <summary>Upward speed in m/s by sample.</summary>
    public IReadOnlyList<double?> VelocityY { get; }

    /// <summary>Forward acceleration in m/s² by sample.</summary>
    public IReadOnlyList<double?> AccelerationX { get; }

    /// <summary>Upward acceleration in m/s² by sample.</summary>
    public IReadOnlyList<double?> AccelerationY { get; }

    /// <summary>SD of a speed; null when the error of a point is not known.</summary>
    public Speed? VelocityStandardError
        => pointSd is { } sd ? Speed.FromMetresPerSecond(sd.Metres * NoiseGain.OfVelocity(Track.Smoothing, rate)) : null;

    /// <summary>SD of an acceleration; null when the error of a point is not known.</summary>
    public Acceleration? AccelerationStandardError
        => pointSd is { } sd ? Acceleration.FromMetresPerSecondSquared(sd.Metres * NoiseGain.OfAcceleration(Track.Smoothing, rate)) : null;

    /// <summary>The motion of a landmark.</summary>
    /// <exception cref="KeyNotFoundException">Not digitised.</exception>
    /// <exception cref="ArgumentException">An uneven frame rate: make it even first (<see cref="EvenGrid"/>).</exception>
    public static MarkerMotion Of(DigitisedClip clip, MarkerRole role)
    {
        ArgumentNullException.ThrowIfNull(clip);
        EvenGrid.Require(clip);
        return new(clip[role], clip);
    }
}
