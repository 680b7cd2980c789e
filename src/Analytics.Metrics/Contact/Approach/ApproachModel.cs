using System.Globalization;
using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Sprinting.Curve;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics;
using Analytics.Statistics.Distributions;

namespace Analytics.Metrics.Contact;

/// <summary>
/// A player's run into contact by his own split fit: from rest, straight ahead, at full effort. Standard errors carry on the covariance of V and T (which holds what a fitted clock offset or run-in costs them)
/// and the error of body mass, by derivatives; intervals use Student's t with the degrees of freedom of the fit. What a player does in front of an opponent, most often slowing down, is not in it. Sources: [furusawa1927], [keller1973]; slowing down before tackles from memory.
/// </summary>
public sealed record ApproachModel
{
    private readonly (double Vv, double Vt, double Tt)? covariance;
    private readonly double degreesOfFreedom;
    private readonly int gates;

    private ApproachModel(MonoExponential curve, (double, double, double)? covariance, double degreesOfFreedom, int gates, Mass bodyMass, Mass? bodyMassSd, StartCaveat? caveat)
    {
        (Curve, this.covariance, this.degreesOfFreedom, this.gates, Caveat) = (curve, covariance, degreesOfFreedom, gates, caveat);
        BodyMass = Require.Positive(bodyMass, "body mass");
        BodyMassSd = Require.NotNegative(bodyMassSd ?? BodyMassError.Usual, "SD of body mass");
    }

    /// <summary>The curve from rest.</summary>
    public MonoExponential Curve { get; }

    /// <summary>Body mass.</summary>
    public Mass BodyMass { get; }

    /// <summary>Its SD.</summary>
    public Mass BodyMassSd { get; }

    /// <summary>What the start of the timed run does to the figures; null when nothing.</summary>
    public StartCaveat? Caveat { get; }

    /// <summary>Why a run gives no approach; null when it does.</summary>
    public static string? WhyNot(SprintReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Fit.Curve is null ? $"the splits give no curve: {reading.Fit.Explanation}" : null;
    }

    /// <summary>The approach from a run.</summary>
    /// <param name="reading">The run and its fit.</param>
    /// <param name="bodyMass">Body mass, above 0.</param>
    /// <param name="bodyMassSd">Its SD; <see cref="BodyMassError.Usual"/> when left out.</param>
    /// <exception cref="ArgumentException">A run without a curve (<see cref="WhyNot"/>).</exception>
    public static ApproachModel Of(SprintReading reading, Mass bodyMass, Mass? bodyMassSd = null)
        => WhyNot(reading) is { } reason
            ? throw new ArgumentException($"No approach can be made from this run: {reason}. Give a run with more or better splits.", nameof(reading))
            : Of(reading.Fit.Curve!, reading.Trial.Start, bodyMass, bodyMassSd);

    /// <summary>The approach from a fitted curve.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="start">What started the clock.</param>
    /// <param name="bodyMass">Body mass, above 0.</param>
    /// <param name="bodyMassSd">Its SD; <see cref="BodyMassError.Usual"/> when left out.</param>
    public static ApproachModel Of(SprintCurve fit, StartType start, Mass bodyMass, Mass? bodyMassSd = null)
    {
        ArgumentNullException.ThrowIfNull(fit);
        (double, double, double)? covariance = fit.Covariance is { } c ? (c[0, 0], c[1, 0], c[1, 1]) : null;
        return new(fit.FromRest, covariance, fit.DegreesOfFreedom, fit.Gates, bodyMass, bodyMassSd, StartCaveat.For(start, fit.Start));
    }

    /// <summary>The approach from a curve taken as exact; its figures have no standard error.</summary>
    /// <param name="curve">V and T.</param>
    /// <param name="bodyMass">Body mass, above 0.</param>
    public static ApproachModel Of(MonoExponential curve, Mass bodyMass)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return new(curve, null, double.PositiveInfinity, 0, bodyMass, null, null);
    }

    /// <summary>Time from first movement to the end of a gap, in s.</summary>
    /// <param name="gap">Above 0.</param>
    public Estimate TimeToCover(Length gap)
    {
        var (byV, byT) = Curve.TimePartials(gap);
        return Carry(Curve.TimeTo(gap).Seconds, byV, byT, 0, "time to cover " + gap);
    }

    /// <summary>Speed at the end of a gap, in m/s.</summary>
    /// <param name="gap">Above 0.</param>
    public Estimate SpeedAfter(Length gap)
    {
        var (byV, byT) = SpeedPartials(gap);
        return Carry(Curve.SpeedAt(gap).MetresPerSecond, byV, byT, 0, "speed after " + gap);
    }

    /// <summary>Momentum at the end of a gap, in kg·m/s; the error of body mass is in it.</summary>
    /// <param name="gap">Above 0.</param>
    public Estimate MomentumAfter(Length gap)
    {
        var (byV, byT) = SpeedPartials(gap);
        return Momentum(Curve.SpeedAt(gap).MetresPerSecond, byV, byT, "momentum after " + gap);
    }

    /// <summary>Distance covered in a time, in m.</summary>
    /// <param name="time">Since first movement, above 0.</param>
    public Estimate DistanceAfter(Duration time)
    {
        var (byV, byT) = Curve.DistancePartials(Require.Positive(time, "time"));
        return Carry(Curve.DistanceAt(time).Metres, byV, byT, 0, "distance after " + time);
    }

    /// <summary>Speed after a time, in m/s.</summary>
    /// <param name="time">Since first movement, above 0.</param>
    public Estimate SpeedAfter(Duration time)
    {
        var (byV, byT) = SpeedPartials(time);
        return Carry(Curve.SpeedAt(time).MetresPerSecond, byV, byT, 0, "speed after " + time);
    }

    /// <summary>Momentum after a time, in kg·m/s; the error of body mass is in it.</summary>
    /// <param name="time">Since first movement, above 0.</param>
    public Estimate MomentumAfter(Duration time)
    {
        var (byV, byT) = SpeedPartials(time);
        return Momentum(Curve.SpeedAt(time).MetresPerSecond, byV, byT, "momentum after " + time);
    }

    /// <summary>All figures at the end of a gap, with what would change them.</summary>
    /// <param name="gap">Above 0.</param>
    public GapApproach Over(Length gap) => new(this, gap);

    // v = V·q(d) with d = x/(V·T) and dq/dd = (1 − q)/q.
    private (double ByV, double ByT) SpeedPartials(Length gap)
    {
        double v = Curve.TopSpeed.MetresPerSecond, tau = Curve.TimeConstant.Seconds;
        var d = Require.Positive(gap, "gap").Metres / (v * tau);
        var q = ExponentialRun.SpeedShareAtDistance(d);
        return (q - ((1 - q) / q * d), -v * (1 - q) / q * d / tau);
    }

    private (double ByV, double ByT) SpeedPartials(Duration time)
    {
        double v = Curve.TopSpeed.MetresPerSecond, tau = Curve.TimeConstant.Seconds, u = Require.Positive(time, "time").Seconds / tau;
        return (ExponentialRun.SpeedShare(u), -v * u * Math.Exp(-u) / tau);
    }

    private Estimate Momentum(double speed, double byV, double byT, string name)
    {
        var m = BodyMass.Kilograms;
        return Carry(m * speed, m * byV, m * byT, speed * BodyMassSd.Kilograms, name);
    }

    private Estimate Carry(double value, double byV, double byT, double other, string name)
    {
        if (covariance is not { } c) return new(value, null, null, gates, $"{name}; curve taken as exact");
        var variance = (byV * byV * c.Vv) + (2 * byV * byT * c.Vt) + (byT * byT * c.Tt);
        // A sum of squares by nature; rounding may leave it just below 0.
        var error = Math.Sqrt(Math.Max(0, variance) + (other * other));
        var reach = StudentLaw.TwoSided(0.95, degreesOfFreedom) * error;
        return new(value, error, new(value - reach, value + reach), gates,
            string.Create(CultureInfo.InvariantCulture, $"{name}; from rest by the player's split fit, {gates} gates, {degreesOfFreedom} df"));
    }
}
