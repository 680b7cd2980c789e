namespace Analytics.Notebooks.Charts;

/// <summary>A curve as rows of a table: its value at the ticks, and its measured points.</summary>
internal sealed record CurveRow(string Name, double X, double Y, double? Low, double? High, bool Measured);

/// <summary>Makes the rows.</summary>
internal static class CurveRows
{
    public static IEnumerable<CurveRow> Of(IEnumerable<Curve> curves, IReadOnlyList<double> ticks)
        => curves.SelectMany(c => ticks.SelectMany(t => At(c, t)).Concat(c.Points.Select(p => new CurveRow(c.Name, p.X, p.Y, p.Low, p.High, true))));

    private static IEnumerable<CurveRow> At(Curve curve, double x)
    {
        if (Between([.. curve.Line.Select(p => (p.X, p.Y))], x) is { } y)
            yield return new CurveRow(curve.Name, x, y, Between([.. curve.Band.Select(b => (b.X, b.Low))], x), Between([.. curve.Band.Select(b => (b.X, b.High))], x), false);
    }

    // Straight between two neighbours: the same line that is drawn.
    private static double? Between(IReadOnlyList<(double X, double Y)> line, double x)
    {
        for (var i = 1; i < line.Count; i++)
        {
            var ((x0, y0), (x1, y1)) = (line[i - 1], line[i]);
            if (x < x0 || x > x1 || x1 <= x0) continue;
            return y0 + ((y1 - y0) * (x - x0) / (x1 - x0));
        }
        return null;
    }
}
