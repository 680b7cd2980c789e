using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// The direction of a body segment in the plane of the run, from its distal to its proximal end (trunk: from hip to shoulder). Both ends digitised with SD s give √2·s/L rad over the
/// length L, for errors small beside L. A camera that is not square and movement out of the plane bias it further; that is not in the error. Source: [winter2009]; lean from vertical is common practice, no source.
/// </summary>
public sealed record SegmentAngle
{
    private SegmentAngle(double radians, double metres, double? sdRadians) => (Radians, Metres, SdRadians) = (radians, metres, sdRadians);

    /// <summary>From +x (forward), counter-clockwise seen with forward to the right; −180° to 180°.</summary>
    public Angle FromForward => Angle.FromRadians(Radians);

    /// <summary>90° less <see cref="FromForward"/>: 0 upright, positive leaning forward; −180° to 180°.</summary>
    public Angle Lean => Angle.FromRadians(Turn.Wrapped((Math.PI / 2) - Radians));

    /// <summary>SD of both angles; null when the error of a point is not known.</summary>
    public Angle? StandardError => SdRadians is { } sd ? Angle.FromRadians(sd) : null;

    /// <summary>Length of the segment in the picture plane.</summary>
    public Length Length => Length.FromMetres(Metres);

    internal double Radians { get; }

    internal double Metres { get; }

    internal double? SdRadians { get; }

    /// <summary>The angle of one segment at one moment.</summary>
    /// <param name="proximal">End nearer the trunk (trunk: shoulder).</param>
    /// <param name="distal">Other end (trunk: hip).</param>
    /// <param name="pointSd">SD of one coordinate; null when not known.</param>
    /// <exception cref="ArgumentException">A coordinate that is not finite, or both ends at one place.</exception>
    public static SegmentAngle Of(PlanePoint proximal, PlanePoint distal, Length? pointSd = null)
    {
        proximal = PlanePoint.Finite(proximal, "the proximal end");
        distal = PlanePoint.Finite(distal, "the distal end");
        double dx = proximal.XMetres - distal.XMetres, dy = proximal.YMetres - distal.YMetres;
        var length = double.Hypot(dx, dy);
        if (length == 0)
            throw new ArgumentException(FormattableString.Invariant($"Both ends of the segment are at ({distal.XMetres}, {distal.YMetres}) m; a segment of no length has no angle. Digitise its ends apart."), nameof(distal));
        double? sd = pointSd is { } s ? Math.Sqrt(2) * Require.NotNegative(s, "SD of a point").Metres / length : null;
        return new(Math.Atan2(dy, dx), length, sd);
    }
}
