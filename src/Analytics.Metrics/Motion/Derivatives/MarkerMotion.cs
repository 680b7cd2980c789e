using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// Speed and acceleration of one marker by frame, by central differences inside its pieces; blank at their ends. Standard errors count digitising error after the track's filter; the
/// error of the scale comes on top and moves all of them by one factor.
/// </summary>
public sealed class MarkerMotion
{
    private MarkerMotion(MarkerTrack track, DigitisedClip clip)
    {
        Track = track;
        var (step, rate) = (clip.Clock.IntervalSeconds, clip.Clock.Rate);
        VelocityX = CentralDifferences.VelocityByPiece(track.X, track.Pieces, step);
        VelocityY = CentralDifferences.VelocityByPiece(track.Y, track.Pieces, step);
        AccelerationX = CentralDifferences.AccelerationByPiece(track.X, track.Pieces, step);
        AccelerationY = CentralDifferences.AccelerationByPiece(track.Y, track.Pieces, step);
        if (clip.PointSd is not { } sd) return;
        VelocityStandardError = Speed.FromMetresPerSecond(sd.Metres * NoiseGain.OfVelocity(track.Smoothing, rate));
        AccelerationStandardError = Acceleration.FromMetresPerSecondSquared(sd.Metres * NoiseGain.OfAcceleration(track.Smoothing, rate));
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
    public Speed? VelocityStandardError { get; }

    /// <summary>SD of an acceleration; null when the error of a point is not known.</summary>
    public Acceleration? AccelerationStandardError { get; }

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
