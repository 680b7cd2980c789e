namespace Analytics.Metrics.Motion;

/// <summary>One row of a published table of body segments.</summary>
/// <param name="Name">Segment.</param>
/// <param name="EndPoints">The two end points in the table's words; the first is the one the centre of mass counts from.</param>
/// <param name="MassFraction">Share of body mass.</param>
/// <param name="CentreFromFirst">Distance of the centre of mass from the first end point, as a share of the segment's length.</param>
/// <param name="GyrationAboutCentre">Radius of gyration about the centre of mass in the plane of the run, as a share of the length; null when the table has none.</param>
public sealed record SegmentRow(string Name, string EndPoints, double MassFraction, double CentreFromFirst, double? GyrationAboutCentre)
{
    /// <summary>The segment between two digitised landmarks.</summary>
    /// <param name="first">Landmark of the first end point.</param>
    /// <param name="second">Landmark of the other.</param>
    /// <param name="name">Name of this one, for example <c>far thigh</c>; the row's when left out.</param>
    public SegmentMass Between(MarkerRole first, MarkerRole second, string? name = null) => new(name ?? Name, this, [first], [second]);
}
