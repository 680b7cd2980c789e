namespace Analytics.Statistics.Association.Repeated;

/// <summary>One measure of all athletes over the days, and each athlete's own straight line through it, the days' effects taken off.</summary>
/// <remarks>Time runs from 0 on the first day to 1 on the last, so that a slope is the gain over the whole span.</remarks>
internal sealed class GainColumn
{
    private readonly double[] _times;
    private readonly (int Day, double Value)[][] _own;
    private readonly double[] _meanTime;

    /// <param name="times">Time of each day, 0 to 1.</param>
    /// <param name="own">Each athlete's days and values.</param>
    public GainColumn(double[] times, (int Day, double Value)[][] own)
    {
        (_times, _own) = (times, own);
        _meanTime = [.. own.Select(o => o.Length == 0 ? 0 : o.Average(v => times[v.Day]))];
        Leverage = [.. own.Select((o, i) => o.Sum(v => Square(times[v.Day] - _meanTime[i])))];
        Span = [.. own.Select(o => o.Length == 0 ? 0 : times[o[^1].Day] - times[o[0].Day])];
    }

    /// <summary>Σ(t − t̄)² of each athlete: a slope has the error variance over this.</summary>
    public double[] Leverage { get; }

    /// <summary>Time from each athlete's first day to the last.</summary>
    public double[] Span { get; }

    public int Days(int athlete) => _own[athlete].Length;

    /// <summary>Effects of the days by least squares in athlete + day + rest, without the athletes left out.</summary>
    public double[] Effects(Func<int, bool> leftOut)
    {
        var k = _times.Length;
        var normal = new double[k, k];
        var right = new double[k];
        for (var i = 0; i < _own.Length; i++)
        {
            var (own, n) = (_own[i], _own[i].Length);
            if (n < 2 || leftOut(i)) continue;
            double mean = 0;
            foreach (var (_, value) in own) mean += value / n;
            foreach (var (day, value) in own)
            {
                right[day] += value - mean;
                normal[day, day] += 1;
                foreach (var (other, _) in own) normal[day, other] -= 1.0 / n;
            }
        }

        return PivotSolver.Solve(normal, right);
    }

    /// <summary>An athlete's gain; what is left of each day goes into <paramref name="rests"/> by day, 0 on days without a value.</summary>
    public double Line(int athlete, double[] effects, double[] rests)
    {
        var own = _own[athlete];
        double mean = 0, moment = 0;
        foreach (var (day, value) in own)
        {
            mean += (value - effects[day]) / own.Length;
            moment += (_times[day] - _meanTime[athlete]) * (value - effects[day]);
        }

        var gain = moment / Leverage[athlete];
        Array.Clear(rests);
        foreach (var (day, value) in own) rests[day] = value - effects[day] - mean - gain * (_times[day] - _meanTime[athlete]);
        return gain;
    }

    /// <summary>Covariance of the two gains of an athlete for errors that covary by 1 on the same day.</summary>
    public static double Shared(GainColumn x, GainColumn y, int athlete)
    {
        double sum = 0;
        foreach (var (day, _) in x._own[athlete])
        {
            if (y.Has(athlete, day)) sum += (x._times[day] - x._meanTime[athlete]) * (x._times[day] - y._meanTime[athlete]);
        }

        return sum / (x.Leverage[athlete] * y.Leverage[athlete]);
    }

    /// <summary>Expected Σ rest·rest over an athlete's common days for errors that covary by 1 on the same day; the degrees of freedom when x is y.</summary>
    public static double Freedom(GainColumn x, GainColumn y, int athlete)
    {
        double sum = 0;
        foreach (var (s, _) in x._own[athlete])
        {
            if (!y.Has(athlete, s)) continue;
            foreach (var (t, _) in x._own[athlete])
            {
                if (y.Has(athlete, t)) sum += x.Maker(athlete, s, t) * y.Maker(athlete, s, t);
            }
        }

        return sum;
    }

    // Cell of the matrix that makes rests out of values.
    private double Maker(int i, int s, int t)
        => (s == t ? 1 : 0) - 1.0 / _own[i].Length - (_times[s] - _meanTime[i]) * (_times[t] - _meanTime[i]) / Leverage[i];

    private bool Has(int athlete, int day)
    {
        foreach (var (own, _) in _own[athlete])
        {
            if (own == day) return true;
        }

        return false;
    }

    private static double Square(double v) => v * v;
}
