using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// The centre of mass by frame with its velocity, blank where a needed landmark is missing and (velocity) at the ends of pieces. Always the same segments, so that a marker that disappears cannot move it.
/// Standard errors count digitising error after each track's filter; see <see cref="CentreOfMass"/> for what they leave out, and <see cref="VelocityAt"/> for the scale.
/// </summary>
public sealed class CentreOfMassSeries
{
    private readonly MarkerTrack track;
    private readonly DigitisedClip clip;

    private CentreOfMassSeries(CentreOfMass centre, DigitisedClip clip, MarkerTrack track)
    {
        (Centre, this.track, this.clip) = (centre, track, clip);
        var step = clip.Clock.Interval;
        VelocityX = new BlankSeries(CentralDifferences.VelocityByPiece(track.X, track.Pieces, step));
        VelocityY = new BlankSeries(CentralDifferences.VelocityByPiece(track.Y, track.Pieces, step));
        if (clip.PointSd is not { } sd) return;
        StandardError = Length.FromMetres(sd.Metres * Spread(NoiseGain.OfPosition));
        VelocityStandardError = Speed.FromMetresPerSecond(sd.Metres * Spread(NoiseGain.OfVelocity));
    }

    /// <summary>What is counted.</summary>
    public CentreOfMass Centre { get; }

    /// <summary>x forward in m by sample; null where a landmark is missing.</summary>
    public IReadOnlyList<double?> XMetres => track.XMetres;

    /// <summary>y up in m by sample; null where a landmark is missing.</summary>
    public IReadOnlyList<double?> YMetres => track.YMetres;

    /// <summary>Samples in which a landmark was filled in, not digitised.</summary>
    public int FilledCount => track.FilledCount;

    /// <summary>The stretches without a gap.</summary>
    public IReadOnlyList<TrackPiece> Pieces => track.Pieces;

    /// <summary>Forward velocity in m/s by sample.</summary>
    public IReadOnlyList<double?> VelocityX { get; }

    /// <summary>Upward velocity in m/s by sample.</summary>
    public IReadOnlyList<double?> VelocityY { get; }

    /// <summary>SD of x and of y; null when the error of a point is not known.</summary>
    public Length? StandardError { get; }

    /// <summary>SD of each component of the velocity by digitising error; null when the error of a point is not known.</summary>
    public Speed? VelocityStandardError { get; }

    /// <summary>The path of a centre of mass through a clip.</summary>
    /// <param name="centre">What is counted.</param>
    /// <param name="clip">The clip; usually filtered.</param>
    /// <exception cref="KeyNotFoundException">A landmark that was not digitised.</exception>
    /// <exception cref="ArgumentException">An uneven frame rate.</exception>
    public static CentreOfMassSeries Of(CentreOfMass centre, DigitisedClip clip)
    {
        ArgumentNullException.ThrowIfNull(centre);
        ArgumentNullException.ThrowIfNull(clip);
        EvenGrid.Require(clip);
        double[] x = new double[clip.Count], y = new double[clip.Count];
        var filled = new bool[clip.Count];
        foreach (var (role, weight) in centre.Weights)
        {
            var track = clip[role];
            // A gap is NaN and stays so in the sum.
            for (var i = 0; i < x.Length; i++) (x[i], y[i], filled[i]) = (x[i] + (weight * track.X[i]), y[i] + (weight * track.Y[i]), filled[i] | track.IsFilled(i));
        }
        return new(centre, clip, new("centre of mass", MarkerRole.Hip, x, y, filled));
    }

    /// <summary>Velocity at a frame; its standard errors include the scale: √(SE² + (v·relative SD of the scale)²). Null at the ends of pieces and in gaps.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A frame outside the clip.</exception>
    public CentreOfMassVelocity? VelocityAt(int frame)
    {
        var i = clip.IndexOf(frame);
        return VelocityX[i] is { } vx && VelocityY[i] is { } vy
            ? new(Speed.FromMetresPerSecond(vx), WithScale(vx), Speed.FromMetresPerSecond(vy), WithScale(vy))
            : null;
    }

    private Speed? WithScale(double v) => VelocityStandardError is { } se ? Speed.FromMetresPerSecond(double.Hypot(se.MetresPerSecond, v * (clip.ScaleRelativeSd ?? 0))) : null;

    private double Spread(Func<LowPass?, Frequency, double> gain)
        => Math.Sqrt(Centre.Weights.Sum(w => Math.Pow(w.Value * gain(clip[w.Key].Smoothing, clip.Clock.Rate), 2)));
}

/// <summary>Velocity of a centre of mass with its standard errors (digitising and scale); null errors when the error of a point is not known.</summary>
/// <param name="Forward">Along the run.</param>
/// <param name="ForwardStandardError">Its standard error.</param>
/// <param name="Up">Upwards.</param>
/// <param name="UpStandardError">Its standard error.</param>
public sealed record CentreOfMassVelocity(Speed Forward, Speed? ForwardStandardError, Speed Up, Speed? UpStandardError);
