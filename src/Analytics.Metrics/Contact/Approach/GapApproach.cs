using Analytics.Quantities;
using Analytics.Statistics;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>What one change of a player would do at the end of a gap, everything else held.</summary>
/// <param name="Change">The change in words, for example <c>0.1 m/s more top speed</c>.</param>
/// <param name="Time">Change of the time to cover the gap.</param>
/// <param name="Speed">Change of the speed there.</param>
/// <param name="Momentum">Change of the momentum there.</param>
public sealed record Sensitivity(string Change, Duration Time, Speed Speed, Momentum Momentum);

/// <summary>Time, speed and momentum at the end of a gap, and what would change them.</summary>
public sealed record GapApproach : Result
{
    private readonly ApproachModel model;

    internal GapApproach(ApproachModel model, Length gap)
    {
        (this.model, Gap, Time, Speed, Momentum) = (model, gap, model.TimeToCover(gap), model.SpeedAfter(gap), model.MomentumAfter(gap));
        Sensitivities = [.. Changes()];
    }

    /// <summary>The gap.</summary>
    public Length Gap { get; }

    /// <summary>Time from first movement, in s.</summary>
    public Estimate Time { get; }

    /// <summary>Speed at its end, in m/s.</summary>
    public Estimate Speed { get; }

    /// <summary>Momentum at its end, in kg·m/s.</summary>
    public Estimate Momentum { get; }

    /// <summary>What would change them. More mass is counted at unchanged speed; whether a heavier player stays as fast is another question.</summary>
    public IReadOnlyList<Sensitivity> Sensitivities { get; }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new($"Run into contact over {Gap}", Time.Method,
    [
        Line("time from first movement", Time, "s"), Line("speed at contact", Speed, "m/s"), Line("momentum at contact", Momentum, "kg·m/s"),
        .. Sensitivities.Select(s => new ResultLine("momentum with " + s.Change, s.Momentum.KilogramMetresPerSecond, "kg·m/s more")
        {
            Note = FormattableString.Invariant($"time {1000 * s.Time.Seconds:+0.0;-0.0;0} ms, speed {s.Speed.MetresPerSecond:+0.000;-0.000;0} m/s"),
        }),
    ])
    {
        Basis = $"body mass {model.BodyMass} (SD {model.BodyMassSd}), top speed {model.Curve.TopSpeed}, time constant {model.Curve.TimeConstant}",
        Remarks =
        [
            .. model.Caveat is { } caveat ? [caveat.Text] : Array.Empty<string>(),
            "At full effort straight ahead; players adjust their speed before contact. Momentum says what is carried, not how hard to hit.",
        ],
    };

    private IEnumerable<Sensitivity> Changes()
    {
        double m = model.BodyMass.Kilograms, v = model.Curve.TopSpeed.MetresPerSecond, tau = model.Curve.TimeConstant.Seconds;
        yield return With("1 kg more", m + 1, v, tau);
        yield return With("10 lb more", m + Mass.FromPounds(10).Kilograms, v, tau);
        yield return With("0.1 m/s more top speed", m, v + 0.1, tau);
        if (tau > 0.01) yield return With("0.01 s shorter time constant", m, v, tau - 0.01);
        if (tau > 0.1) yield return With("0.1 s shorter time constant", m, v, tau - 0.1);
    }

    private Sensitivity With(string change, double kilograms, double topSpeed, double timeConstant)
    {
        var other = ApproachModel.Of(new(Quantities.Speed.FromMetresPerSecond(topSpeed), Duration.FromSeconds(timeConstant)), Mass.FromKilograms(kilograms));
        return new(change,
            Duration.FromSeconds(other.TimeToCover(Gap).Value - Time.Value),
            Quantities.Speed.FromMetresPerSecond(other.SpeedAfter(Gap).Value - Speed.Value),
            Quantities.Momentum.FromKilogramMetresPerSecond(other.MomentumAfter(Gap).Value - Momentum.Value));
    }

    private static ResultLine Line(string name, Estimate estimate, string unit)
        => new(name, estimate.Value, unit) { Interval = estimate.Interval, StandardError = estimate.StandardError, Note = estimate.StandardError is null ? "curve taken as exact" : string.Empty };
}
