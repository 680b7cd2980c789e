using static Analytics.Metrics.Motion.BodyPart;

namespace Analytics.Metrics.Motion;

/// <summary>De Leva's adjusted segments, table 4 [deleva1996]; radius of gyration about the transverse axis is not used here, the sagittal one is printed first.</summary>
internal static class DeLevaTable
{
    public static SegmentTable Make(bool female)
    {
        SegmentRow Row(string name, string ends, double mass, double centre, double gyration, double womensMass, double womensCentre, double womensGyration)
            => female ? new(name, ends, womensMass, womensCentre, womensGyration) : new(name, ends, mass, centre, gyration);
        return new(female ? "de Leva, women" : "de Leva, men", "deleva1996",
        [
            Row("Head", "vertex, mid-gonion", 0.0694, 0.5976, 0.362, 0.0668, 0.5894, 0.33),
            Row("Trunk", "suprasternal notch, mid-hips", 0.4346, 0.4486, 0.372, 0.4257, 0.4151, 0.357),
            Row("Upper trunk", "suprasternal notch, xiphion", 0.1596, 0.2999, 0.716, 0.1545, 0.2077, 0.746),
            Row("Middle trunk", "xiphion, navel", 0.1633, 0.4502, 0.482, 0.1465, 0.4512, 0.433),
            Row("Lower trunk", "navel, mid-hips", 0.1117, 0.6115, 0.615, 0.1247, 0.492, 0.433),
            Row("Upper arm", "shoulder joint, elbow joint", 0.0271, 0.5772, 0.285, 0.0255, 0.5754, 0.278),
            Row("Forearm", "elbow joint, wrist joint", 0.0162, 0.4574, 0.276, 0.0138, 0.4559, 0.261),
            Row("Hand", "wrist joint, third knuckle", 0.0061, 0.79, 0.628, 0.0056, 0.7474, 0.531),
            Row("Thigh", "hip joint, knee joint", 0.1416, 0.4095, 0.329, 0.1478, 0.3612, 0.369),
            Row("Shank", "knee joint, ankle joint", 0.0433, 0.4395, 0.251, 0.0481, 0.4352, 0.267),
            Row("Foot", "heel, toe tip", 0.0137, 0.4415, 0.257, 0.0129, 0.4014, 0.299),
            Row("Head 2", "vertex, C7", 0.0694, 0.5002, 0.303, 0.0668, 0.4841, 0.271),
            Row("Trunk 2", "C7, mid-hips", 0.4346, 0.5138, 0.328, 0.4257, 0.4964, 0.307),
            Row("Trunk 3", "mid-shoulders, mid-hips", 0.4346, 0.431, 0.384, 0.4257, 0.3782, 0.379),
            Row("Upper trunk 2", "C7, xiphion", 0.1596, 0.5066, 0.505, 0.1545, 0.505, 0.466),
            Row("Forearm 2", "elbow joint, ulnar styloid", 0.0162, 0.4608, 0.278, 0.0138, 0.4592, 0.263),
            Row("Hand 2", "wrist joint, tip of the third finger", 0.0061, 0.3624, 0.288, 0.0056, 0.3427, 0.244),
            Row("Hand 3", "ulnar styloid, tip of the third finger", 0.0061, 0.3691, 0.285, 0.0056, 0.3502, 0.241),
            Row("Hand 4", "ulnar styloid, third knuckle", 0.0061, 0.7948, 0.614, 0.0056, 0.7534, 0.519),
            Row("Shank 2", "knee joint, lateral malleolus", 0.0433, 0.4459, 0.255, 0.0481, 0.4416, 0.271),
            Row("Shank 3", "knee joint, tip of the tibia", 0.0433, 0.4524, 0.258, 0.0481, 0.4481, 0.275),
        ], table => new All(
            new Leaf(table["Head 2"].Between(MarkerRole.HeadVertex, MarkerRole.Neck, "head")),
            new BestOf(
                new Leaf(new("trunk", table["Trunk 3"], [MarkerRole.Shoulder, MarkerRole.FarShoulder], [MarkerRole.Hip, MarkerRole.FarHip])),
                new Leaf(new("trunk", table["Trunk 2"], [MarkerRole.Neck], [MarkerRole.Hip, MarkerRole.FarHip]))),
            Limbs(table, false),
            Limbs(table, true)));
    }

    private static All Limbs(SegmentTable table, bool far) => new(
        Side.Of(table["Upper arm"], MarkerRole.Shoulder, MarkerRole.Elbow, far),
        Side.Of(table["Forearm"], MarkerRole.Elbow, MarkerRole.Wrist, far),
        Side.Of(table["Hand"], MarkerRole.Wrist, MarkerRole.Knuckle, far),
        Side.Of(table["Thigh"], MarkerRole.Hip, MarkerRole.Knee, far),
        Side.Of(table["Shank"], MarkerRole.Knee, MarkerRole.Ankle, far),
        Side.Of(table["Foot"], MarkerRole.Heel, MarkerRole.Toe, far));
}
