namespace Analytics.Metrics.Motion;

/// <summary>A point in the plane of the run: x forward (the direction of travel), y up, both in m.</summary>
/// <param name="XMetres">Forward.</param>
/// <param name="YMetres">Up.</param>
public readonly record struct PlanePoint(double XMetres, double YMetres)
{
    internal static PlanePoint Finite(PlanePoint point, string what)
        => double.IsFinite(point.XMetres) && double.IsFinite(point.YMetres)
            ? point
            : throw new ArgumentException(FormattableString.Invariant($"{what} is ({point.XMetres}, {point.YMetres}) m; both coordinates must be finite."), nameof(point));
}
