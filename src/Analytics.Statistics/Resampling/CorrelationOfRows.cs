using Analytics.Statistics.Association;

namespace Analytics.Statistics.Resampling;

/// <summary>Pearson's correlation of chosen rows, without copying them.</summary>
internal sealed class CorrelationOfRows
{
    // Columns as deviations from their means: a resample's mean is then near 0 and one pass keeps its digits.
    private readonly double[] _x, _y;
    private readonly PairSums _sums;

    public CorrelationOfRows(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        Paired.Require(x, y, 3);
        Paired.Varies(x, nameof(x), "a correlation");
        Paired.Varies(y, nameof(y), "a correlation");
        _sums = Paired.Sums(x, y);
        _x = [.. x.Select(v => v - _sums.MeanX)];
        _y = [.. y.Select(v => v - _sums.MeanY)];
    }

    /// <summary>The correlation; NaN when a column of the chosen rows does not vary.</summary>
    public double Of(ReadOnlySpan<int> rows)
    {
        double sx = 0, sy = 0, xx = 0, yy = 0, xy = 0;
        foreach (var row in rows)
        {
            double a = _x[row], b = _y[row];
            sx += a;
            sy += b;
            xx += a * a;
            yy += b * b;
            xy += a * b;
        }

        var n = rows.Length;
        double vx = xx - sx * sx / n, vy = yy - sy * sy / n;
        // Rows that are all alike leave rounding only.
        if (vx <= 1e-14 * xx || vy <= 1e-14 * yy) return double.NaN;
        return Math.Clamp((xy - sx * sy / n) / Math.Sqrt(vx * vy), -1, 1);
    }

    public double[] Influence()
    {
        var (n, r) = (_sums.N, _sums.Correlation);
        double sx = Math.Sqrt(_sums.XX / n), sy = Math.Sqrt(_sums.YY / n);
        return [.. _x.Zip(_y, (a, b) =>
        {
            double zx = a / sx, zy = b / sy;
            return zx * zy - r / 2 * (zx * zx + zy * zy);
        })];
    }
}
