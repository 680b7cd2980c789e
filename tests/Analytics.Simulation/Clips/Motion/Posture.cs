using Analytics.Metrics.Motion;
using Analytics.Simulation.Clips.Body;

namespace Analytics.Simulation.Clips.Motion;

/// <summary>Lays the segments of a body end to end from the hips.</summary>
public static class Posture
{
    /// <summary>Landmarks with the middle of the hips at (0, 0).</summary>
    /// <param name="body">Lengths.</param>
    /// <param name="gait">Swing of the limbs.</param>
    /// <param name="trunkLean">Degrees from upright.</param>
    /// <param name="near">Phase of the near leg.</param>
    /// <param name="far">Phase of the far leg.</param>
    public static Dictionary<MarkerRole, Point> About(BodyLengths body, Gait gait, double trunkLean, double near, double far)
    {
        var neck = Point.Up(trunkLean, body.NeckToHip);
        var points = new Dictionary<MarkerRole, Point>
        {
            [MarkerRole.Neck] = neck,
            // The head is held up: it leans half as much as the trunk.
            [MarkerRole.HeadVertex] = neck + Point.Up(trunkLean / 2, body.Head),
        };
        AddSide(points, body, gait, trunkLean, near, far: false);
        AddSide(points, body, gait, trunkLean, far, far: true);
        return points;
    }

    private static void AddSide(Dictionary<MarkerRole, Point> points, BodyLengths body, Gait gait, double trunkLean, double phase, bool far)
    {
        var shoulder = Point.Up(trunkLean, body.ShoulderToHip);
        var elbow = shoulder - Point.Up(Gait.UpperArm(phase), body.UpperArm);
        var wrist = elbow - Point.Up(Gait.Forearm(phase), body.Forearm);
        var knee = new Point(0, 0) - Point.Up(gait.Thigh(phase), body.Thigh);
        var ankle = knee - Point.Up(gait.Shank(phase), body.Shank);
        // Along the foot, heel to toe, and at right angles to it, sole to ankle.
        var along = Point.Up(90 + Gait.FootDown(phase), 1);
        var heel = ankle - (body.AnkleFromHeel * along) - (body.AnkleHeight * new Point(-along.Y, along.X));
        foreach (var (role, at) in new[]
        {
            (MarkerRole.Shoulder, shoulder), (MarkerRole.Elbow, elbow), (MarkerRole.Wrist, wrist), (MarkerRole.Knuckle, wrist - Point.Up(Gait.Hand(phase), body.Hand)),
            (MarkerRole.Hip, new Point(0, 0)), (MarkerRole.Knee, knee), (MarkerRole.Ankle, ankle), (MarkerRole.Heel, heel), (MarkerRole.Toe, heel + (body.Foot * along)),
        }) points[far ? role.Far() : role] = at;
    }
}
