namespace Analytics.Metrics.Contact;

/// <summary>A moment of a repetition at which the posture is read.</summary>
public enum ReviewMoment
{
    /// <summary>Just before the first movement: the set position.</summary>
    FirstMovement,

    /// <summary>Half way in time from first movement to contact.</summary>
    MidWay,

    /// <summary>The first touch, from what was seen before it.</summary>
    Contact,
}

/// <summary>The posture at one moment. Leans are from upright, forward positive; flexions are 0 when straight. Near is the side towards the camera.</summary>
/// <param name="Moment">Which moment.</param>
/// <param name="ShinLean">Lean of the near shin, knee over ankle.</param>
/// <param name="FarShinLean">Lean of the far shin.</param>
/// <param name="TrunkLean">Lean of the trunk, shoulder over hip.</param>
/// <param name="KneeFlexion">Near knee.</param>
/// <param name="HipFlexion">Near hip.</param>
public sealed record PostureAt(ReviewMoment Moment, ContactMeasure ShinLean, ContactMeasure FarShinLean, ContactMeasure TrunkLean, ContactMeasure KneeFlexion, ContactMeasure HipFlexion)
{
    /// <summary>All five.</summary>
    public IReadOnlyList<ContactMeasure> All => [ShinLean, FarShinLean, TrunkLean, KneeFlexion, HipFlexion];
}
