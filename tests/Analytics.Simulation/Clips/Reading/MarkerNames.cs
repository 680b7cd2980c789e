using Analytics.Metrics.Motion;

namespace Analytics.Simulation.Clips.Reading;

/// <summary>What markers are called in the files, and which are clicked.</summary>
public static class MarkerNames
{
    /// <summary>Every landmark of fourteen segments, and the stick.</summary>
    public static IReadOnlyList<MarkerRole> Full { get; } =
    [
        MarkerRole.HeadVertex, MarkerRole.Neck, MarkerRole.Shoulder, MarkerRole.Elbow, MarkerRole.Wrist, MarkerRole.Knuckle, MarkerRole.Hip, MarkerRole.Knee, MarkerRole.Ankle, MarkerRole.Heel, MarkerRole.Toe,
        MarkerRole.FarShoulder, MarkerRole.FarElbow, MarkerRole.FarWrist, MarkerRole.FarKnuckle, MarkerRole.FarHip, MarkerRole.FarKnee, MarkerRole.FarAnkle, MarkerRole.FarHeel, MarkerRole.FarToe,
        MarkerRole.CalibrationFrom, MarkerRole.CalibrationTo,
    ];

    /// <summary>What one evening of clicking allows: trunk, legs, the stick.</summary>
    public static IReadOnlyList<MarkerRole> Few { get; } =
    [
        MarkerRole.Shoulder, MarkerRole.Hip, MarkerRole.Knee, MarkerRole.Ankle, MarkerRole.FarHip, MarkerRole.FarKnee, MarkerRole.FarAnkle, MarkerRole.CalibrationFrom, MarkerRole.CalibrationTo,
    ];

    /// <summary>Name in a file: the ends of the stick, <c>far_knee</c>, <c>knee</c>.</summary>
    public static string Of(MarkerRole role) => role switch
    {
        MarkerRole.CalibrationFrom => "stick_low",
        MarkerRole.CalibrationTo => "stick_high",
        MarkerRole.HeadVertex => "head",
        _ => role.IsFar() ? "far_" + Of(role.Near()) : role.ToString().ToLowerInvariant(),
    };
}
