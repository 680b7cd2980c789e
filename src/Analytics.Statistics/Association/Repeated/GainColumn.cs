namespace Analytics.Statistics.Association.Repeated;

/// <summary>One measure of all athletes over the days, and each athlete's own straight line through it, the days' effects taken off.</summary>
/// <remarks>Time runs from 0 on the first day to 1 on the last, so that a slope is the gain over the whole span.</remarks>
internal sealed class GainColumn
{
    private readonly double[] _times;
    private readonly (int Day, double Value, double Precision)[][] _own;
    private readonly double[] _meanTime, _precision, _right;
    private readonly double[,] _normal;

    /// <param name="times">Time of each day, 0 to 1.</param>
    /// <param name="own">Each athlete's days, values and their precisions: the usual error variance over that of the value.</param>
    public GainColumn(double[] times, (int Day, double Value, double Precision)[][] own)
    {
        (_times, _own) = (times, own);
        _precision = [.. own.Select(o => o.Sum(v => v.Precision))];
        _meanTime = [.. own.Select((o, i) => o.Length == 0 ? 0 : o.Sum(v => v.Precision * times[v.Day]) / _precision[i])];
        Leverage = [.. own.Select((o, i) => o.Sum(v => v.Precision * Square(times[v.Day] - _meanTime[i])))];
        (_normal, _right) = (new double[times.Length, times.Length], new double[times.Length]);
        for (var i = 0; i < own.Length; i++) Add(i, 1, _normal, _right);
        Span = [.. own.Select(o => o.Length == 0 ? 0 : times[o[^1].Day] - times[o[0].Day])];
    }

    /// <summary>Σ precision (t − t̄)² of each athlete: a slope has the error variance over this.</summary>
    public double[] Leverage { get; }

    /// <summary>Largest value without its sign: what rounding is measured by.</summary>
    public double Size => _own.SelectMany(o => o).Select(v => Math.Abs(v.Value)).DefaultIfEmpty().Max();

    /// <summary>Time from each athlete's first day to the last.</summary>
    public double[] Span { get; }

    public int Days(int athlete) => _own[athlete].Length;

    /// <summary>Effects of the days by least squares in athlete + day + rest, without the athletes left out.</summary>
    public double[] Effects(Func<int, bool> leftOut)
    {
        var (normal, right) = ((double[,])_normal.Clone(), (double[])_right.Clone());
        for (var i = 0; i < _own.Length; i++)
        {
            if (leftOut(i)) Add(i, -1, normal, right);
        }

        for (var d = 0; d < right.Length; d++)
        {
            // A day nobody is left on: what stands there is rounding.
            if (normal[d, d] < 1e-9 * _normal[d, d]) normal[d, d] = 0;
        }

        return PivotSolver.Solve(normal, right);
    }

    private void Add(int athlete, int sign, double[,] normal, double[] right)
    {
        var (own, all) = (_own[athlete], _precision[athlete]);
        if (own.Length < 2) return;
        double mean = 0;
        foreach (var (_, value, precision) in own) mean += precision * value / all;
        foreach (var (day, value, precision) in own)
        {
            right[day] += sign * precision * (value - mean);
            normal[day, day] += sign * precision;
            foreach (var (other, _, second) in own) normal[day, other] -= sign * precision * second / all;
        }
    }

    /// <summary>An athlete's gain; what is left of each day, times √precision, goes into <paramref name="rests"/> by day, 0 on days without a value.</summary>
    public double Line(int athlete, double[] effects, double[] rests)
    {
        var own = _own[athlete];
        double mean = 0, moment = 0;
        foreach (var (day, value, precision) in own)
        {
            mean += precision * (value - effects[day]) / _precision[athlete];
            moment += precision * (_times[day] - _meanTime[athlete]) * (value - effects[day]);
        }

        var gain = moment / Leverage[athlete];
        Array.Clear(rests);
        foreach (var (day, value, precision) in own)
            rests[day] = Math.Sqrt(precision) * (value - effects[day] - mean - gain * (_times[day] - _meanTime[athlete]));
        return gain;
    }

    /// <summary>Covariance of the two gains of an athlete for errors that covary by 1 on the same day.</summary>
    public static double Shared(GainColumn x, GainColumn y, int athlete)
    {
        double sum = 0;
        foreach (var (day, _, precision) in x._own[athlete])
            sum += precision * y.Precision(athlete, day) * (x._times[day] - x._meanTime[athlete]) * (x._times[day] - y._meanTime[athlete]);
        return sum / (x.Leverage[athlete] * y.Leverage[athlete]);
    }

    /// <summary>Degrees of freedom around an athlete's line.</summary>
    public double Freedom(int athlete) => Math.Max(0, _own[athlete].Length - 2);

    /// <summary>Expected Σ rest·rest over an athlete's common days for errors that covary by 1 on the same day.</summary>
    public static double Freedom(GainColumn x, GainColumn y, int athlete)
    {
        double sum = 0;
        foreach (var (s, _, first) in x._own[athlete])
        {
            if (y.Precision(athlete, s) is not (> 0 and var second)) continue;
            foreach (var (t, _, one) in x._own[athlete])
            {
                if (y.Precision(athlete, t) is > 0 and var other)
                    sum += x.Maker(athlete, s, t, Math.Sqrt(first * one)) * y.Maker(athlete, s, t, Math.Sqrt(second * other)) * Math.Sqrt(one * other);
            }
        }

        return sum;
    }

    // Cell of the matrix that makes rests out of values, both times √precision.
    private double Maker(int i, int s, int t, double root)
        => (s == t ? 1 : 0) - root / _precision[i] - root * (_times[s] - _meanTime[i]) * (_times[t] - _meanTime[i]) / Leverage[i];

    private double Precision(int athlete, int day)
    {
        foreach (var (own, _, precision) in _own[athlete])
        {
            if (own == day) return precision;
        }

        return 0;
    }

    private static double Square(double v) => v * v;
}
