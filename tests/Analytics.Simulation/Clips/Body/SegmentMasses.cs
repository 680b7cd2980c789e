using Analytics.Metrics.Motion;
using Analytics.Simulation.Clips.Motion;

namespace Analytics.Simulation.Clips.Body;

/// <summary>
/// Centre of mass of a posture by de Leva's men [deleva1996], typed here a second time and summed segment by segment: a route of its own, apart from the library's weights.
/// </summary>
public static class SegmentMasses
{
    private static readonly (MarkerRole First, MarkerRole Second, double Mass, double Centre)[] Middle =
    [
        (MarkerRole.HeadVertex, MarkerRole.Neck, 0.0694, 0.5002), (MarkerRole.Shoulder, MarkerRole.Hip, 0.4346, 0.4310),
    ];

    private static readonly (MarkerRole First, MarkerRole Second, double Mass, double Centre)[] Limbs =
    [
        (MarkerRole.Shoulder, MarkerRole.Elbow, 0.0271, 0.5772), (MarkerRole.Elbow, MarkerRole.Wrist, 0.0162, 0.4574), (MarkerRole.Wrist, MarkerRole.Knuckle, 0.0061, 0.7900),
        (MarkerRole.Hip, MarkerRole.Knee, 0.1416, 0.4095), (MarkerRole.Knee, MarkerRole.Ankle, 0.0433, 0.4395), (MarkerRole.Heel, MarkerRole.Toe, 0.0137, 0.4415),
    ];

    /// <summary>Fourteen segments: head, trunk and six limbs on either side.</summary>
    public static Point Centre(IReadOnlyDictionary<MarkerRole, Point> landmarks)
    {
        var (sum, mass) = (new Point(0, 0), 0.0);
        foreach (var (first, second, share, centre) in Middle.Concat(Limbs).Concat(Limbs.Select(l => l with { First = l.First.Far(), Second = l.Second.Far() })))
        {
            Point a = landmarks[first], b = landmarks[second];
            (sum, mass) = (sum + (share * (a + (centre * (b - a)))), mass + share);
        }
        return (1 / mass) * sum;
    }
}
