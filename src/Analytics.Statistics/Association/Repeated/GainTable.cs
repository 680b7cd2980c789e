namespace Analytics.Statistics.Association.Repeated;

/// <summary>Two measures of the same athletes, ready to be looked at with some athletes left out.</summary>
internal sealed class GainTable
{
    private readonly GainColumn _x, _y;
    private readonly int _days;
    private readonly double[] _weights, _sharedXY, _freedomXX, _freedomYY, _freedomXY;

    public GainTable(GainColumn x, GainColumn y, int athletes, int days, double leastSpan)
    {
        (_x, _y, _days, Athletes) = (x, y, days, athletes);
        Used = [.. Enumerable.Range(0, athletes).Where(i => x.Span[i] >= leastSpan && y.Span[i] >= leastSpan)];
        _sharedXY = Each(i => GainColumn.Shared(x, y, i));
        _freedomXX = Each(x.Freedom);
        _freedomYY = Each(y.Freedom);
        _freedomXY = Each(i => GainColumn.Freedom(x, y, i));
        _weights = Each(_ => 1);
        if (Used.Length < 3) return;
        // Athletes seen on fewer or closer days have noisier gains and count for less, by the variances of a first, unweighted look.
        var first = Look(_ => false).Moments;
        var q = Used.Average(i => 1 / x.Leverage[i]);
        var p = Used.Average(i => 1 / y.Leverage[i]);
        var (tx, ty) = (Math.Max(0, first.XX - first.ErrorXX), Math.Max(0, first.YY - first.ErrorYY));
        foreach (var i in Used)
        {
            var product = (tx + first.ErrorXX / q / x.Leverage[i]) * (ty + first.ErrorYY / p / y.Leverage[i]);
            _weights[i] = product > 0 ? first.XX * first.YY / product : 1;
        }
    }

    public int Athletes { get; }

    /// <summary>Largest value of each measure without its sign.</summary>
    public (double X, double Y) Sizes => (_x.Size, _y.Size);

    /// <summary>Athletes with both gains.</summary>
    public int[] Used { get; }

    /// <summary>Degrees of freedom behind the errors' covariance.</summary>
    public double Freedom => Used.Sum(i => _freedomXY[i]);

    /// <summary>The same of each measure's error variance.</summary>
    public (double X, double Y) Freedoms => (Used.Sum(i => _freedomXX[i]), Used.Sum(i => _freedomYY[i]));

    public double Weight(int athlete) => _weights[athlete];

    /// <summary>Gains by athlete, and moments, without the athletes left out.</summary>
    public (double[] X, double[] Y, GainMoments Moments) Look(Func<int, bool> leftOut)
    {
        double[] bx = _x.Effects(leftOut), by = _y.Effects(leftOut);
        double[] gx = new double[Athletes], gy = new double[Athletes], rx = new double[_days], ry = new double[_days];
        double w = 0, ww = 0, mx = 0, my = 0, exx = 0, eyy = 0, exy = 0, fxx = 0, fyy = 0, fxy = 0, cxx = 0, cyy = 0, cxy = 0;
        var n = 0;
        foreach (var i in Used)
        {
            if (leftOut(i)) continue;
            gx[i] = _x.Line(i, bx, rx);
            gy[i] = _y.Line(i, by, ry);
            for (var d = 0; d < _days; d++)
            {
                exx += rx[d] * rx[d];
                eyy += ry[d] * ry[d];
                exy += rx[d] * ry[d];
            }

            var own = _weights[i];
            n++;
            (w, ww, mx, my) = (w + own, ww + own * own, mx + own * gx[i], my + own * gy[i]);
            (fxx, fyy, fxy) = (fxx + _freedomXX[i], fyy + _freedomYY[i], fxy + _freedomXY[i]);
            (cxx, cyy, cxy) = (cxx + own / _x.Leverage[i], cyy + own / _y.Leverage[i], cxy + own * _sharedXY[i]);
        }

        (mx, my) = (mx / w, my / w);
        double sxx = 0, syy = 0, sxy = 0;
        foreach (var i in Used)
        {
            if (leftOut(i)) continue;
            sxx += _weights[i] * (gx[i] - mx) * (gx[i] - mx);
            syy += _weights[i] * (gy[i] - my) * (gy[i] - my);
            sxy += _weights[i] * (gx[i] - mx) * (gy[i] - my);
        }

        // The days' effects and the mean gain cost one athlete.
        var (divisor, left) = (w - ww / w, (n - 1.0) / n);
        return (gx, gy, new(
            sxx / divisor, syy / divisor, sxy / divisor,
            Part(exx, fxx * left, cxx / w), Part(eyy, fyy * left, cyy / w), Part(exy, fxy * left, cxy / w)));
    }

    // Freedoms are whole numbers but for rounding and precisions: so little is none.
    private static double Part(double squares, double freedom, double share) => freedom > 1e-9 ? squares / freedom * share : 0;

    private double[] Each(Func<int, double> value)
    {
        var all = new double[Athletes];
        foreach (var i in Used) all[i] = value(i);
        return all;
    }
}
