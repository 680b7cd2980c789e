using static Analytics.Metrics.Motion.BodyPart;

namespace Analytics.Metrics.Motion;

/// <summary>Dempster's segments as given by Winter [dempster1955; winter2009].</summary>
internal static class DempsterTable
{
    public static SegmentTable Make() => new("Dempster", "dempster1955",
    [
        new("Hand", "wrist, second knuckle of the middle finger", 0.006, 0.506, 0.297),
        new("Forearm", "elbow, ulnar styloid", 0.016, 0.43, 0.303),
        new("Upper arm", "shoulder joint, elbow", 0.028, 0.436, 0.322),
        new("Forearm hand", "elbow, ulnar styloid", 0.022, 0.682, 0.468),
        new("Total arm", "shoulder joint, ulnar styloid", 0.05, 0.53, 0.368),
        new("Foot", "lateral malleolus, head of metatarsal II", 0.0145, 0.5, 0.475),
        new("Leg", "femoral condyles, medial malleolus", 0.0465, 0.433, 0.302),
        new("Thigh", "greater trochanter, femoral condyles", 0.1, 0.433, 0.323),
        new("Head neck", "C7-T1 and first rib, ear canal", 0.081, 1, 0.495),
        new("Thorax", "C7-T1, T12-L1 and diaphragm", 0.216, 0.82, null),
        new("Abdomen", "T12-L1, L4-L5", 0.139, 0.44, null),
        new("Pelvis", "L4-L5, greater trochanter", 0.142, 0.105, null),
        new("Trunk", "greater trochanter, shoulder joint", 0.497, 0.5, null),
        new("Trunk head neck", "greater trochanter, shoulder joint", 0.578, 0.66, 0.503),
        new("HAT", "greater trochanter, shoulder joint", 0.678, 0.626, 0.496),
        new("Foot leg", "femoral condyles, medial malleolus", 0.061, 0.606, 0.416),
        new("Total leg", "greater trochanter, medial malleolus", 0.161, 0.447, 0.326),
        new("Thorax abdomen", "C7-T1, L4-L5", 0.355, 0.63, null),
        new("Abdomen pelvis", "T12-L1, greater trochanter", 0.281, 0.27, null),
    ], table => new All(
        // Head, arms and trunk as one where arms were not digitised well enough.
        new BestOf(
            new All(Middle(table["Trunk head neck"], "trunk, head and neck"), Arm(table, false), Arm(table, true)),
            Middle(table["HAT"], "head, arms and trunk")),
        Leg(table, false),
        Leg(table, true)));

    private static Leaf Middle(SegmentRow row, string name) => new(new(name, row, [MarkerRole.Hip, MarkerRole.FarHip], [MarkerRole.Shoulder, MarkerRole.FarShoulder]));

    private static BestOf Arm(SegmentTable table, bool far) => new(
        new All(
            Side.Of(table["Upper arm"], MarkerRole.Shoulder, MarkerRole.Elbow, far),
            new BestOf(
                new All(Side.Of(table["Forearm"], MarkerRole.Elbow, MarkerRole.Wrist, far), Side.Of(table["Hand"], MarkerRole.Wrist, MarkerRole.Knuckle, far)),
                Side.Of(table["Forearm hand"], MarkerRole.Elbow, MarkerRole.Wrist, far))),
        Side.Of(table["Total arm"], MarkerRole.Shoulder, MarkerRole.Wrist, far));

    private static BestOf Leg(SegmentTable table, bool far) => new(
        new All(
            Side.Of(table["Thigh"], MarkerRole.Hip, MarkerRole.Knee, far),
            new BestOf(
                new All(Side.Of(table["Leg"], MarkerRole.Knee, MarkerRole.Ankle, far), Side.Of(table["Foot"], MarkerRole.Ankle, MarkerRole.Metatarsal, far)),
                Side.Of(table["Foot leg"], MarkerRole.Knee, MarkerRole.Ankle, far))),
        Side.Of(table["Total leg"], MarkerRole.Hip, MarkerRole.Ankle, far));
}
