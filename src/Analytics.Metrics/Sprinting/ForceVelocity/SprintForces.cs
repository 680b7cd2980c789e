using Analytics.Metrics.Sprinting.Curve;
using Analytics.Quantities;

namespace Analytics.Metrics.Sprinting.ForceVelocity;

/// <summary>Forces at one instant of a run.</summary>
/// <param name="Time">Since first movement.</param>
/// <param name="Speed">v.</param>
/// <param name="Acceleration">a.</param>
/// <param name="Drag">Force of the air, above 0 when it holds back.</param>
/// <param name="Horizontal">m·a plus drag: mean horizontal force on the ground.</param>
/// <param name="Power">Horizontal force times speed.</param>
/// <param name="Ratio">Horizontal over total force, with a mean vertical force of body weight; no unit.</param>
/// <param name="Direction">Direction of the mean force above the horizontal.</param>
public sealed record ForcePoint(
    Duration Time, Speed Speed, Acceleration Acceleration, Force Drag, Force Horizontal, Power Power, double Ratio, Angle Direction);

/// <summary>
/// A runner of given mass and stature on a mono-exponential run in given air: F = m·a + k·(v - w)·|v - w|.
/// Sources: [arsac2002], [morin2011], [samozino2016].
/// </summary>
public sealed record SprintForces
{
    private readonly double v;
    private readonly double tau;
    private readonly double mass;
    private readonly double drag;
    private readonly double wind;

    /// <summary>Puts a runner on a run.</summary>
    /// <param name="run">The run from rest.</param>
    /// <param name="bodyMass">Body mass, above 0.</param>
    /// <param name="stature">Stature, above 0.</param>
    /// <param name="air">The air.</param>
    public SprintForces(MonoExponential run, Mass bodyMass, Length stature, AirConditions air)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(air);
        (Run, BodyMass, Stature, Air) = (run, bodyMass, stature, air);
        (v, tau) = (run.TopSpeed.MetresPerSecond, run.TimeConstant.Seconds);
        (mass, drag, wind) = (bodyMass.Kilograms, air.DragKgPerMetre(stature, bodyMass), air.Tailwind.MetresPerSecond);
    }

    /// <summary>The run.</summary>
    public MonoExponential Run { get; }

    /// <summary>Body mass.</summary>
    public Mass BodyMass { get; }

    /// <summary>Stature.</summary>
    public Length Stature { get; }

    /// <summary>The air.</summary>
    public AirConditions Air { get; }

    /// <summary>Forces at an instant.</summary>
    /// <param name="time">Since first movement, 0 or more.</param>
    public ForcePoint At(Duration time)
    {
        var speed = Run.SpeedAt(time);
        var (air, horizontal) = (Drag(speed.MetresPerSecond), Horizontal(speed.MetresPerSecond));
        var weight = mass * Gravity.Published.MetresPerSecondSquared;
        return new(time, speed, Run.AccelerationAt(time), Force.FromNewtons(air), Force.FromNewtons(horizontal),
            Power.FromWatts(horizontal * speed.MetresPerSecond), Ratio(horizontal), Angle.FromRadians(Math.Atan2(weight, horizontal)));
    }

    /// <summary>
    /// The instant of greatest power, where d(F·v)/dv = 0; without drag v = V/2, P = m·V²/(4·T), t = T·ln 2.
    /// </summary>
    public ForcePoint PeakPower()
    {
        // P(v) falls on either side of one maximum: bisect its slope.
        var (low, high) = (0.0, v);
        for (var i = 0; i < 200 && high - low > 1e-15 * v; i++)
        {
            var middle = 0.5 * (low + high);
            var slope = Horizontal(middle) + (middle * ((-mass / tau) + (2 * drag * Math.Abs(middle - wind))));
            (low, high) = slope > 0 ? (middle, high) : (low, middle);
        }
        return At(Run.TimeToSpeed(Speed.FromMetresPerSecond(0.5 * (low + high))));
    }

    internal double Horizontal(double speed) => (mass * (v - speed) / tau) + Drag(speed);

    internal double Ratio(double horizontal)
    {
        var weight = mass * Gravity.Published.MetresPerSecondSquared;
        return horizontal / Math.Sqrt((horizontal * horizontal) + (weight * weight));
    }

    private double Drag(double speed) => drag * (speed - wind) * Math.Abs(speed - wind);
}
