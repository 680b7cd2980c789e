namespace Analytics.Metrics.Motion;

/// <summary>How heights of a clip and rows of its picture belong together.</summary>
/// <param name="TopMetres">Height of row 0, the top row, m.</param>
/// <param name="MetresPerRow">Height of one row, m, above 0.</param>
public sealed record PictureRows(double TopMetres, double MetresPerRow)
{
    /// <summary>The row, from the top, at which a height is drawn; outside the picture when the height is.</summary>
    /// <param name="metres">Height, m.</param>
    public double RowAt(double metres) => (TopMetres - metres) / MetresPerRow;
}
