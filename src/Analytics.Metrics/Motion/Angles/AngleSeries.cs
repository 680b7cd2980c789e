namespace Analytics.Metrics.Motion;

/// <summary>
/// An angle by frame. Whole turns are taken out, so the series runs on smoothly past ±180°; frames without a needed point have none. The SD counts digitising error after the filter of each point
/// (error independent from frame to frame, away from the ends of a piece); where ends have different filters their mean square is taken.
/// </summary>
public sealed class AngleSeries
{
    private readonly double[] radians;
    private readonly double[] sd;
    private readonly TrackPiece[] pieces;
    private readonly Quantities.Duration step;
    private readonly int firstFrame;

    private AngleSeries(string name, DigitisedClip clip, double[] radians, double[] sd)
    {
        Turn.Unwrap(radians);
        (Name, firstFrame, step) = (name, clip.FirstFrame, clip.Clock.Interval);
        (this.radians, this.sd, HasError, IsEven) = (radians, sd, clip.PointSd is not null, !clip.Clock.IsVariable);
        pieces = [.. MarkerTrack.Split(radians)];
    }

    /// <summary>What is measured, for example <c>shank lean</c>.</summary>
    public string Name { get; }

    /// <summary>Whether the error of a point was known.</summary>
    public bool HasError { get; }

    /// <summary>Frame number of the first sample.</summary>
    public int FirstFrame => firstFrame;

    /// <summary>The angle in degrees by sample; null where a point is missing.</summary>
    public IReadOnlyList<double?> Degrees => new BlankSeries(radians, 180 / Math.PI);

    /// <summary>SD in degrees by sample; null where a point is missing or the error of a point is not known.</summary>
    public IReadOnlyList<double?> StandardErrorDegrees => new BlankSeries(sd, 180 / Math.PI);

    /// <summary>Angular velocity in °/s by central difference; null at the ends of pieces, and everywhere when the frame rate is not even.</summary>
    public IReadOnlyList<double?> DegreesPerSecond
        => IsEven ? new BlankSeries(CentralDifferences.VelocityByPiece(radians, pieces, step), 180 / Math.PI) : new double?[radians.Length];

    /// <summary>Whether the frames come at an even rate.</summary>
    public bool IsEven { get; }

    /// <summary>The direction of a segment from forward (+x), counter-clockwise.</summary>
    /// <exception cref="KeyNotFoundException">A landmark that was not digitised.</exception>
    /// <exception cref="ArgumentException">A frame in which both ends are at one place.</exception>
    public static AngleSeries FromForward(DigitisedClip clip, BodySegment segment) => OfSegment(clip, segment, "from forward", 0, 1);

    /// <summary>The lean of a segment from upright, forward positive.</summary>
    /// <exception cref="KeyNotFoundException">A landmark that was not digitised.</exception>
    /// <exception cref="ArgumentException">A frame in which both ends are at one place.</exception>
    public static AngleSeries Lean(DigitisedClip clip, BodySegment segment) => OfSegment(clip, segment, "lean", Math.PI / 2, -1);

    /// <summary>Knee flexion; <see cref="JointAngle.Knee"/>.</summary>
    /// <param name="clip">The clip.</param>
    /// <param name="far">The far leg.</param>
    /// <exception cref="KeyNotFoundException">A landmark that was not digitised.</exception>
    public static AngleSeries Knee(DigitisedClip clip, bool far = false)
        => OfJoint(clip, "knee flexion", far, [MarkerRole.Hip, MarkerRole.Knee, MarkerRole.Ankle], (p, s) => JointAngle.Knee(p[0], p[1], p[2], s));

    /// <summary>Hip flexion; <see cref="JointAngle.Hip"/>.</summary>
    /// <param name="clip">The clip.</param>
    /// <param name="far">The far side.</param>
    /// <exception cref="KeyNotFoundException">A landmark that was not digitised.</exception>
    public static AngleSeries Hip(DigitisedClip clip, bool far = false)
        => OfJoint(clip, "hip flexion", far, [MarkerRole.Shoulder, MarkerRole.Hip, MarkerRole.Knee], (p, s) => JointAngle.Hip(p[0], p[1], p[2], s));

    /// <summary>Ankle angle; <see cref="JointAngle.Ankle"/>. By the ball of the foot, or by the toe when that was not digitised.</summary>
    /// <param name="clip">The clip.</param>
    /// <param name="far">The far leg.</param>
    /// <exception cref="KeyNotFoundException">A landmark that was not digitised.</exception>
    public static AngleSeries Ankle(DigitisedClip clip, bool far = false)
    {
        ArgumentNullException.ThrowIfNull(clip);
        var front = clip.Find(far ? MarkerRole.FarMetatarsal : MarkerRole.Metatarsal) is null ? MarkerRole.Toe : MarkerRole.Metatarsal;
        return OfJoint(clip, "ankle", far, [MarkerRole.Knee, MarkerRole.Ankle, MarkerRole.Heel, front], (p, s) => JointAngle.Ankle(p[0], p[1], p[2], p[3], s));
    }

    // The direction times a sign plus an offset; without an object a frame, because clips have many.
    private static AngleSeries OfSegment(DigitisedClip clip, BodySegment segment, string what, double offset, int sign)
    {
        ArgumentNullException.ThrowIfNull(clip);
        ArgumentNullException.ThrowIfNull(segment);
        var (name, proximal, distal) = ($"{segment.Name} {what}", clip[segment.Proximal], clip[segment.Distal]);
        var pointSd = MeanSd(clip, [segment.Proximal, segment.Distal]) ?? double.NaN;
        double[] radians = new double[clip.Count], sd = new double[clip.Count];
        for (var i = 0; i < radians.Length; i++)
        {
            double dx = proximal.X[i] - distal.X[i], dy = proximal.Y[i] - distal.Y[i];
            if (dx == 0 && dy == 0) throw new ArgumentException($"{name}, frame {clip.FirstFrame + i}: both ends are at one place; a segment of no length has no angle. Digitise its ends apart.", nameof(clip));
            radians[i] = offset + (sign * Math.Atan2(dy, dx));
            sd[i] = Math.Sqrt(2) * pointSd / Math.Sqrt((dx * dx) + (dy * dy));
        }
        return new(name, clip, radians, sd);
    }

    /// <summary>Root mean square of the points' SD after their filters, in m; null when not known.</summary>
    private static double? MeanSd(DigitisedClip clip, MarkerRole[] roles)
        => clip.PointSd is null ? null : Math.Sqrt(roles.Average(r => Math.Pow(clip.PointSdOf(r)!.Value.Metres, 2)));

    private static AngleSeries OfJoint(DigitisedClip clip, string name, bool far, MarkerRole[] roles, Func<PlanePoint[], Quantities.Length?, JointAngle> angle)
        => Of(clip, far ? $"far {name}" : name, far ? [.. roles.Select(r => r.Far())] : roles, (p, s) =>
        {
            var at = angle(p, s);
            return (at.Radians, at.SdRadians);
        });

    private static AngleSeries Of(DigitisedClip clip, string name, MarkerRole[] roles, Func<PlanePoint[], Quantities.Length?, (double Radians, double? Sd)> angle)
    {
        ArgumentNullException.ThrowIfNull(clip);
        MarkerTrack[] tracks = [.. roles.Select(r => clip[r])];
        Quantities.Length? pointSd = MeanSd(clip, roles) is { } metres ? Quantities.Length.FromMetres(metres) : null;
        double[] radians = new double[clip.Count], sd = new double[clip.Count];
        var points = new PlanePoint[tracks.Length];
        for (var i = 0; i < clip.Count; i++)
        {
            (radians[i], sd[i]) = (double.NaN, double.NaN);
            if (tracks.Any(t => double.IsNaN(t.X[i]))) continue;
            for (var k = 0; k < points.Length; k++) points[k] = new(tracks[k].X[i], tracks[k].Y[i]);
            try
            {
                var at = angle(points, pointSd);
                (radians[i], sd[i]) = (at.Radians, at.Sd ?? double.NaN);
            }
            catch (ArgumentException error)
            {
                throw new ArgumentException($"{name}, frame {clip.FirstFrame + i}: {error.Message}", nameof(clip), error);
            }
        }
        return new(name, clip, radians, sd);
    }
}
