namespace Analytics.Metrics.Motion;

/// <summary>A line between two landmarks whose angle is measured.</summary>
/// <param name="Name">Name in words.</param>
/// <param name="Proximal">End nearer the trunk (trunk: shoulder; foot: the back end, so that a flat foot pointing forward would be 180°, see <see cref="Foot"/>).</param>
/// <param name="Distal">Other end.</param>
public sealed record BodySegment(string Name, MarkerRole Proximal, MarkerRole Distal)
{
    /// <summary>Shin: knee to ankle.</summary>
    public static BodySegment Shank { get; } = new("shank", MarkerRole.Knee, MarkerRole.Ankle);

    /// <summary>Thigh: hip to knee.</summary>
    public static BodySegment Thigh { get; } = new("thigh", MarkerRole.Hip, MarkerRole.Knee);

    /// <summary>Trunk: shoulder over hip.</summary>
    public static BodySegment Trunk { get; } = new("trunk", MarkerRole.Shoulder, MarkerRole.Hip);

    /// <summary>Trunk by the rib cage, for sets of markers without a shoulder.</summary>
    public static BodySegment LowerTrunk { get; } = new("lower trunk", MarkerRole.RibCage, MarkerRole.Hip);

    /// <summary>Foot from heel to ball, measured at the heel: 0° flat and pointing forward, negative with the toes down [winter2009].</summary>
    public static BodySegment Foot { get; } = new("foot", MarkerRole.Metatarsal, MarkerRole.Heel);

    /// <summary>Foot from heel to toe, for sets of markers without the ball of the foot.</summary>
    public static BodySegment WholeFoot { get; } = new("whole foot", MarkerRole.Toe, MarkerRole.Heel);

    /// <summary>The same segment of the far side.</summary>
    public BodySegment Far() => new($"far {Name}", Proximal.Far(), Distal.Far());
}
