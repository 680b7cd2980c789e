namespace Analytics.Metrics.Motion;

/// <summary>Which landmark of the body a marker is. "Far" is the side away from the camera; plain names are the near side or the midline.</summary>
public enum MarkerRole
{
    /// <summary>Top of the head (vertex).</summary>
    HeadVertex,

    /// <summary>Seventh neck vertebra (C7).</summary>
    Neck,

    /// <summary>Rib cage, side of the trunk.</summary>
    RibCage,

    /// <summary>Shoulder joint.</summary>
    Shoulder,

    /// <summary>Elbow joint.</summary>
    Elbow,

    /// <summary>Wrist joint.</summary>
    Wrist,

    /// <summary>Knuckle of the middle finger.</summary>
    Knuckle,

    /// <summary>Hip joint (greater trochanter).</summary>
    Hip,

    /// <summary>Knee joint.</summary>
    Knee,

    /// <summary>Ankle joint (lateral malleolus).</summary>
    Ankle,

    /// <summary>Back of the heel.</summary>
    Heel,

    /// <summary>Head of a metatarsal: the ball of the foot.</summary>
    Metatarsal,

    /// <summary>Tip of the toe.</summary>
    Toe,

    /// <summary>Far shoulder.</summary>
    FarShoulder,

    /// <summary>Far elbow.</summary>
    FarElbow,

    /// <summary>Far wrist.</summary>
    FarWrist,

    /// <summary>Far knuckle.</summary>
    FarKnuckle,

    /// <summary>Far hip.</summary>
    FarHip,

    /// <summary>Far knee.</summary>
    FarKnee,

    /// <summary>Far ankle.</summary>
    FarAnkle,

    /// <summary>Far heel.</summary>
    FarHeel,

    /// <summary>Far ball of the foot.</summary>
    FarMetatarsal,

    /// <summary>Far tip of the toe.</summary>
    FarToe,

    /// <summary>First end of the calibration length.</summary>
    CalibrationFrom,

    /// <summary>Other end of the calibration length.</summary>
    CalibrationTo,
}

/// <summary>What a role is called and where it sits.</summary>
public static class MarkerRoles
{
    /// <summary>The role in words, for example <c>far knee</c>.</summary>
    public static string InWords(this MarkerRole role) => role switch
    {
        MarkerRole.HeadVertex => "head vertex",
        MarkerRole.Neck => "neck (C7)",
        MarkerRole.RibCage => "rib cage",
        MarkerRole.CalibrationFrom => "first calibration end",
        MarkerRole.CalibrationTo => "other calibration end",
        >= MarkerRole.FarShoulder and <= MarkerRole.FarToe => $"far {role.Near().InWords()}",
        _ => role.ToString().ToLowerInvariant(),
    };

    /// <summary>Whether the landmark is on the side away from the camera.</summary>
    public static bool IsFar(this MarkerRole role) => role is >= MarkerRole.FarShoulder and <= MarkerRole.FarToe;

    /// <summary>Whether the landmark is on a body (not an end of the calibration length).</summary>
    public static bool IsBody(this MarkerRole role) => role < MarkerRole.CalibrationFrom;

    /// <summary>The same landmark of the near side; itself when it is there or on the midline.</summary>
    public static MarkerRole Near(this MarkerRole role) => role.IsFar() ? role - MarkerRole.FarShoulder + MarkerRole.Shoulder : role;

    /// <summary>The same landmark of the far side; itself when it is there or has no side.</summary>
    public static MarkerRole Far(this MarkerRole role)
        => role is >= MarkerRole.Shoulder and <= MarkerRole.Toe ? role - MarkerRole.Shoulder + MarkerRole.FarShoulder : role;
}
