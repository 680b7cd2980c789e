using System.Globalization;
using Analytics.Metrics.Sprinting.Curve;
using Analytics.Quantities;

namespace Analytics.Metrics.Sprinting.ForceVelocity;

/// <summary>
/// The times at which force is sampled for the straight line: 0, step, 2·step, ... up to the end.
/// With drag the force is not quite straight in speed, so the line depends on this grid: always state it.
/// </summary>
public sealed record ForceGrid
{
    /// <summary>Makes a grid.</summary>
    /// <param name="step">Between samples, above 0.</param>
    /// <param name="end">Last sample, at least 0.3 s plus two steps, and at most 100,000 steps.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public ForceGrid(Duration step, Duration end)
    {
        (Step, End) = (Require.Positive(step, "step"), end);
        var most = 100_000 * step.Seconds;
        if (!(end.Seconds >= 0.3 + (2 * step.Seconds) && end.Seconds <= most))
            throw new ArgumentOutOfRangeException(nameof(end), end, string.Create(CultureInfo.InvariantCulture,
                $"end must be {0.3 + (2 * step.Seconds)} to {most} s at a step of {step}; got {end}."));
    }

    /// <summary>Between samples.</summary>
    public Duration Step { get; }

    /// <summary>Last sample.</summary>
    public Duration End { get; }

    /// <summary>Samples of 0.01 s over five time constants, when 99.3 % of top speed is reached; at least 1 s.</summary>
    /// <param name="run">The run.</param>
    public static ForceGrid Over(MonoExponential run)
    {
        ArgumentNullException.ThrowIfNull(run);
        var hundredths = Math.Clamp(Math.Round(500 * run.TimeConstant.Seconds), 100, 100_000);
        return new(Duration.FromSeconds(0.01), Duration.FromSeconds(hundredths / 100));
    }

    internal int Samples => (int)Math.Floor((End.Seconds / Step.Seconds) + 1e-9) + 1;
}

/// <summary>Least-squares line of horizontal force on speed, and of force ratio on speed, over a grid; plain SI numbers.</summary>
internal readonly record struct ForceVelocityLine(double F0, double Slope, double RatioAtStart, double RatioSlope)
{
    /// <summary>First time whose force ratio means anything [samozino2016].</summary>
    public const double RatioFrom = 0.3;

    public double V0 => -F0 / Slope;

    public double PeakPower => F0 * V0 / 4;

    public static ForceVelocityLine Fit(SprintForces forces, ForceGrid grid)
    {
        var (force, ratio) = (default(LineSums), default(LineSums));
        var (v, tau) = (forces.Run.TopSpeed.MetresPerSecond, forces.Run.TimeConstant.Seconds);
        for (var i = 0; i < grid.Samples; i++)
        {
            var time = i * grid.Step.Seconds;
            var speed = v * ExponentialRun.SpeedShare(time / tau);
            var horizontal = forces.Horizontal(speed);
            force.Add(speed, horizontal);
            if (time >= RatioFrom - 1e-9) ratio.Add(speed, forces.Ratio(horizontal));
        }
        var first = forces.Ratio(forces.Horizontal(v * ExponentialRun.SpeedShare(RatioFrom / tau)));
        return new(force.Intercept, force.Slope, first, ratio.Slope);
    }

    /// <summary>Running sums of a straight-line fit, about the running mean so that nothing cancels.</summary>
    private struct LineSums
    {
        private int n;
        private double meanX, meanY, xx, xy;

        public readonly double Slope => xy / xx;

        public readonly double Intercept => meanY - (Slope * meanX);

        public void Add(double x, double y)
        {
            n++;
            var dx = x - meanX;
            meanX += dx / n;
            meanY += (y - meanY) / n;
            xx += dx * (x - meanX);
            xy += dx * (y - meanY);
        }
    }
}
