using Analytics.Metrics.Sprinting.Curve;
using Analytics.Statistics.Fitting;

namespace Analytics.Metrics.Sprinting.Fits;

/// <summary>
/// Time on the clock at a gate. Parameters V, T, then t0 if the clock may be off, then h if the body may be moving.
/// h is the unseen time, D = x(h) the unseen distance: in h the model is smooth down to rest, where in D it has a vertical tangent.
/// </summary>
internal readonly struct SplitTimeModel(StartModel start) : IFitModel
{
    private readonly bool hasOffset = start.HasOffset();
    private readonly bool hasRunIn = start.HasRunIn();

    public int ParameterCount => 2 + (hasOffset ? 1 : 0) + (hasRunIn ? 1 : 0);

    public double Evaluate(double x, ReadOnlySpan<double> p, Span<double> gradient)
    {
        var (v, tau) = (p[0], p[1]);
        var at = 2;
        var offset = 0.0;
        if (hasOffset)
        {
            gradient[at] = 1;
            offset = p[at++];
        }
        var (unseen, unseenLag, unseenShare, unseenSlope) = (0.0, 0.0, 0.0, 0.0);
        if (hasRunIn)
        {
            unseen = p[at];
            var a = unseen / tau;
            unseenLag = ExponentialRun.Lag(a);
            unseenShare = ExponentialRun.SpeedShare(a);
            unseenSlope = ExponentialRun.LagSlope(a);
        }
        if (!(v > 0 && tau > 0)) return double.NaN;
        var seen = x / (v * tau);
        var d = seen + unseenLag;
        var q = ExponentialRun.SpeedShareAtDistance(d);
        gradient[0] = -tau * seen / (v * q);
        gradient[1] = (q - ((d + q) * (1 - q)) + unseenSlope) / q;
        if (hasRunIn) gradient[at] = (unseenShare / q) - 1;
        return offset + (tau * (d + q)) - unseen;
    }

    /// <summary>Speed at a distance from the first gate, and its derivatives.</summary>
    public double Speed(double x, ReadOnlySpan<double> p, Span<double> gradient)
    {
        var (v, tau) = (p[0], p[1]);
        gradient.Clear();
        var at = hasOffset ? 3 : 2;
        var a = hasRunIn ? p[at] / tau : 0;
        var share = ExponentialRun.SpeedShare(a);
        var seen = x / (v * tau);
        var q = ExponentialRun.SpeedShareAtDistance(seen + ExponentialRun.Lag(a));
        var slope = q > 0 ? (1 - q) / q : 0; // dq/dd; at rest the speed is 0 whatever V and T
        gradient[0] = q - (slope * seen);
        gradient[1] = -v * slope * (seen + (share * a)) / tau;
        if (hasRunIn) gradient[at] = v * slope * share / tau;
        return v * q;
    }

    /// <summary>The unseen distance D = x(h), and its derivatives.</summary>
    public double RunIn(ReadOnlySpan<double> p, Span<double> gradient)
    {
        var at = hasOffset ? 3 : 2;
        var a = p[at] / p[1];
        gradient.Clear();
        gradient[0] = p[1] * ExponentialRun.Lag(a);
        gradient[1] = p[0] * ExponentialRun.LagSlope(a);
        gradient[at] = p[0] * ExponentialRun.SpeedShare(a);
        return p[0] * gradient[0];
    }
}

/// <summary>Distance from the first gate at a time on the clock; parameters as in <see cref="SplitTimeModel"/>.</summary>
internal readonly struct SplitDistanceModel(StartModel start) : IFitModel
{
    private readonly bool hasOffset = start.HasOffset();
    private readonly bool hasRunIn = start.HasRunIn();

    public int ParameterCount => 2 + (hasOffset ? 1 : 0) + (hasRunIn ? 1 : 0);

    public double Evaluate(double x, ReadOnlySpan<double> p, Span<double> gradient)
    {
        var (v, tau) = (p[0], p[1]);
        var offset = hasOffset ? p[2] : 0;
        var unseen = hasRunIn ? p[^1] : 0;
        var (a, b) = (unseen / tau, (x - offset + unseen) / tau);
        if (!(v > 0 && tau > 0 && b >= 0)) return double.NaN;
        var share = ExponentialRun.SpeedShare(b);
        var lag = ExponentialRun.Lag(b) - ExponentialRun.Lag(a);
        gradient[0] = tau * lag;
        gradient[1] = v * (ExponentialRun.LagSlope(b) - ExponentialRun.LagSlope(a));
        if (hasOffset) gradient[2] = -v * share;
        if (hasRunIn) gradient[ParameterCount - 1] = v * (share - ExponentialRun.SpeedShare(a));
        return v * tau * lag;
    }
}
