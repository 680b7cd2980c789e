using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Sprinting.Curve;

/// <summary>
/// A sprint from rest as an exponential approach to top speed: dv/dt = (V - v)/T, with V the top speed (m/s) and T the time constant (s).
/// Time counts from the first movement, distance from rest. The inverse uses the principal Lambert branch,
/// t(x) = T·[1 + d + W0(-exp(-1 - d))] with d = x/(V·T), by its series about d = 0 where that is exact.
/// Fits a run of 30 to 60 m; it knows no slowing down. Sources: [furusawa1927], [keller1973], [samozino2016].
/// </summary>
public sealed record MonoExponential
{
    private readonly double v;
    private readonly double tau;

    /// <summary>Makes a curve.</summary>
    /// <param name="topSpeed">V, above 0.</param>
    /// <param name="timeConstant">T, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public MonoExponential(Speed topSpeed, Duration timeConstant)
    {
        TopSpeed = Require.Positive(topSpeed, "top speed");
        TimeConstant = Require.Positive(timeConstant, "time constant");
        (v, tau) = (topSpeed.MetresPerSecond, timeConstant.Seconds);
    }

    /// <summary>V, the speed approached but not reached.</summary>
    public Speed TopSpeed { get; }

    /// <summary>T: after T the speed is 63.2 % of V, after 3 T 95 %.</summary>
    public Duration TimeConstant { get; }

    /// <summary>V/T, the acceleration at the first movement.</summary>
    public Acceleration InitialAcceleration => Acceleration.FromMetresPerSecondSquared(v / tau);

    /// <summary>v(t) = V·(1 - exp(-t/T)).</summary>
    /// <param name="time">Since first movement, 0 or more.</param>
    public Speed SpeedAt(Duration time) => Speed.FromMetresPerSecond(v * ExponentialRun.SpeedShare(Reduced(time)));

    /// <summary>x(t) = V·[t - T·(1 - exp(-t/T))].</summary>
    /// <param name="time">Since first movement, 0 or more.</param>
    public Length DistanceAt(Duration time) => Length.FromMetres(v * tau * ExponentialRun.Lag(Reduced(time)));

    /// <summary>a(t) = (V/T)·exp(-t/T).</summary>
    /// <param name="time">Since first movement, 0 or more.</param>
    public Acceleration AccelerationAt(Duration time) => Acceleration.FromMetresPerSecondSquared(v / tau * Math.Exp(-Reduced(time)));

    /// <summary>t = -T·ln(1 - v/V).</summary>
    /// <param name="speed">0 or more, below V.</param>
    public Duration TimeToSpeed(Speed speed) => Duration.FromSeconds(-tau * LogOfRest(speed));

    /// <summary>x = -V·T·[ln(1 - v/V) + v/V].</summary>
    /// <param name="speed">0 or more, below V.</param>
    public Length DistanceToSpeed(Speed speed) => DistanceAt(TimeToSpeed(speed));

    /// <summary>t(x), the time to a distance.</summary>
    /// <param name="distance">From rest, 0 or more.</param>
    public Duration TimeTo(Length distance)
    {
        var d = Reduced(distance);
        return Duration.FromSeconds(tau * (d + ExponentialRun.SpeedShareAtDistance(d)));
    }

    /// <summary>v(x), the speed at a distance.</summary>
    /// <param name="distance">From rest, 0 or more.</param>
    public Speed SpeedAt(Length distance) => Speed.FromMetresPerSecond(v * ExponentialRun.SpeedShareAtDistance(Reduced(distance)));

    /// <summary>Derivatives of x(t) by V (in s) and by T (in m/s).</summary>
    /// <param name="time">Since first movement, 0 or more.</param>
    public (double ByTopSpeed, double ByTimeConstant) DistancePartials(Duration time)
    {
        var u = Reduced(time);
        return (tau * ExponentialRun.Lag(u), v * ExponentialRun.LagSlope(u));
    }

    /// <summary>Derivatives of t(x) by V (in s²/m) and by T (no unit): -(dx/dp)/v at t(x).</summary>
    /// <param name="distance">From rest, above 0.</param>
    public (double ByTopSpeed, double ByTimeConstant) TimePartials(Length distance)
    {
        var d = Reduced(Require.Positive(distance, "distance"));
        var q = ExponentialRun.SpeedShareAtDistance(d);
        return (-tau * d / (v * q), (q - ((d + q) * (1 - q))) / q);
    }

    private double Reduced(Duration time) => Require.NotNegative(time, "time").Seconds / tau;

    private double Reduced(Length distance) => Require.NotNegative(distance, "distance").Metres / (v * tau);

    private double LogOfRest(Speed speed)
    {
        var share = speed.MetresPerSecond / v;
        if (share is not (>= 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(speed), speed, string.Create(CultureInfo.InvariantCulture,
                $"speed must be 0 or more and below the top speed {TopSpeed}; got {speed}."));
        // ln(1 - s) = -2·atanh(s/(2 - s)): keeps its digits at small s.
        return -2 * Math.Atanh(share / (2 - share));
    }
}
