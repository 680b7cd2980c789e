namespace Analytics.Statistics.Association.Repeated;

/// <summary>What one athlete, or many, add to the two-way fit value = athlete + day + rest: sums about the own mean.</summary>
internal sealed class WithinSums(int days)
{
    private readonly double[,] _normal = new double[days, days];
    private readonly double[] _x = new double[days], _y = new double[days];
    private double _xx, _yy, _xy;

    /// <summary>Adds an athlete's pairs; taken off again with <paramref name="sign"/> −1.</summary>
    public void Add(IReadOnlyList<(int Day, double X, double Y)> own, double sign = 1)
    {
        var n = own.Count;
        double mx = 0, my = 0;
        foreach (var (_, x, y) in own) (mx, my) = (mx + x / n, my + y / n);
        foreach (var (day, x, y) in own)
        {
            double dx = x - mx, dy = y - my;
            _x[day] += sign * dx;
            _y[day] += sign * dy;
            _xx += sign * dx * dx;
            _yy += sign * dy * dy;
            _xy += sign * dx * dy;
            _normal[day, day] += sign;
            foreach (var (other, _, _) in own) _normal[day, other] -= sign / n;
        }
    }

    /// <summary>Squares and products left after the athletes' means and, when asked, the days' effects.</summary>
    public (double XX, double YY, double XY) Left(bool daysToo)
    {
        if (!daysToo) return (_xx, _yy, _xy);
        double[] bx = PivotSolver.Solve(_normal, _x), by = PivotSolver.Solve(_normal, _y);
        double xx = _xx, yy = _yy, xy = _xy;
        for (var d = 0; d < days; d++)
        {
            xx -= bx[d] * _x[d];
            yy -= by[d] * _y[d];
            xy -= bx[d] * _y[d];
        }

        return (xx, yy, xy);
    }
}
