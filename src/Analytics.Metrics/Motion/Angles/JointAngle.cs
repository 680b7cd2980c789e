using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// The angle between two neighbouring segments. Knee: thigh − shank, flexion positive; hip: thigh − trunk, flexion positive; ankle: foot − shank + 90°, 0 at a right angle, toes up positive. SD for a joint shared
/// by both segments, B the angle included: s·√(2/L₁² + 2/L₂² − 2·cos B/(L₁L₂)); without a shared point s·√(2/L₁² + 2/L₂²). Source: [winter2009].
/// </summary>
public sealed record JointAngle
{
    private JointAngle(double radians, double? sdRadians) => (Radians, SdRadians) = (radians, sdRadians);

    /// <summary>The angle, −180° to 180°.</summary>
    public Angle Value => Angle.FromRadians(Radians);

    /// <summary>SD; null when the error of a point is not known.</summary>
    public Angle? StandardError => SdRadians is { } sd ? Angle.FromRadians(sd) : null;

    internal double Radians { get; }

    internal double? SdRadians { get; }

    /// <summary>Knee: 0 straight, flexion positive.</summary>
    /// <exception cref="ArgumentException">A coordinate that is not finite, or a segment of no length.</exception>
    public static JointAngle Knee(PlanePoint hip, PlanePoint knee, PlanePoint ankle, Length? pointSd = null)
        => Between(SegmentAngle.Of(hip, knee, pointSd), SegmentAngle.Of(knee, ankle, pointSd), 0, +1);

    /// <summary>Hip: 0 with the thigh in line with the trunk, flexion positive.</summary>
    /// <exception cref="ArgumentException">A coordinate that is not finite, or a segment of no length.</exception>
    public static JointAngle Hip(PlanePoint shoulder, PlanePoint hip, PlanePoint knee, Length? pointSd = null)
        => Between(SegmentAngle.Of(hip, knee, pointSd), SegmentAngle.Of(shoulder, hip, pointSd), 0, +1);

    /// <summary>Ankle by heel and toe (or ball): 0 at a right angle, toes up positive.</summary>
    /// <exception cref="ArgumentException">A coordinate that is not finite, or a segment of no length.</exception>
    public static JointAngle Ankle(PlanePoint knee, PlanePoint ankle, PlanePoint heel, PlanePoint toe, Length? pointSd = null)
        => Between(SegmentAngle.Of(toe, heel, pointSd), SegmentAngle.Of(knee, ankle, pointSd), Math.PI / 2, 0);

    /// <summary>One direction less the other, plus an offset.</summary>
    /// <param name="first">Segment.</param>
    /// <param name="second">Segment taken off.</param>
    /// <param name="offset">Added, in rad.</param>
    /// <param name="shared">1 when the distal end of one is the proximal end of the other, 0 when no point is shared.</param>
    private static JointAngle Between(SegmentAngle first, SegmentAngle second, double offset, int shared)
    {
        double? sd = null;
        if (first.SdRadians is { } s1 && second.SdRadians is { } s2)
        {
            // s1·s2 is 2s²/(L₁L₂); the included angle B is 180° less the difference of directions.
            var together = shared * s1 * s2 * Math.Cos(first.Radians - second.Radians);
            sd = Math.Sqrt(Math.Max(0, (s1 * s1) + (s2 * s2) + together));
        }
        return new(Turn.Wrapped(first.Radians - second.Radians + offset), sd);
    }
}
