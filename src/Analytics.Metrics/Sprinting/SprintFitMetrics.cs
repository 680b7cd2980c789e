using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Metrics.Sprinting;

/// <summary>Metrics read off the fitted curve of a run; a run that cannot be fitted has none.</summary>
internal static class SprintFitMetrics
{
    private static readonly Length TenYards = Length.FromYards(10);

    public static IEnumerable<Metric> All(SplitErrorPools? pools) =>
    [
        new()
        {
            Id = "max_speed",
            Label = "Top speed",
            Unit = "m/s",
            Decimals = 2,
            Better = Direction.Higher,
            Quality = Quality.MaximalSpeed,
            Rule = TrialRule.Mean,
            RuleReason = "The best of several fitted values is mostly the luckiest fit; the mean is not.",
            FromTrials = day => Values(day, pools, curve => curve.TopSpeed),
            PlausibleLow = 5,
            PlausibleHigh = 12.5,
            Meaning = "The speed the run is heading for, as the fitted curve sees it; needs a gate past 30 m to be worth much.",
            Formula = "V of v(t) = V·(1 − exp(−t/T)) fitted to the split times",
            Sources = ["samozino2016", "haugen2020"],
        },
        new()
        {
            Id = "acceleration_time_constant",
            Label = "Acceleration time constant",
            Unit = "s",
            Decimals = 2,
            // T is short when the start is strong, but also when top speed is low (T = V/a): it has no good direction of its own.
            Better = Direction.Neither,
            Quality = Quality.Acceleration,
            Rule = TrialRule.Mean,
            RuleReason = "The best of several fitted values is mostly the luckiest fit; the mean is not.",
            FromTrials = day => Values(day, pools, curve => curve.TimeConstant),
            PlausibleLow = 0.4,
            PlausibleHigh = 2.2,
            Meaning = "Time to reach 63 % of top speed. It is top speed over first acceleration, so read it beside top speed; it depends strongly on the start type.",
            Formula = "T of v(t) = V·(1 − exp(−t/T)) fitted to the split times; first acceleration is V/T",
            Sources = ["samozino2016", "clark2019"],
        },
        new()
        {
            Id = "momentum_10yd",
            Label = "Momentum at 10 yd",
            Unit = "kg·m/s",
            Decimals = 0,
            Better = Direction.Higher,
            Quality = Quality.Momentum,
            Rule = TrialRule.Mean,
            RuleReason = "The best of several fitted values is mostly the luckiest fit; the mean is not.",
            FromTrials = Momentum(pools),
            PlausibleLow = 300,
            PlausibleHigh = 1400,
            Meaning = "Body mass times running speed 10 yd from the start line: what a player carries into early contact.",
            Formula = "p = m·v(9.144 m), m body mass [kg], v from the fitted curve [m/s]",
            Sources = ["baker2008", "barr2014"],
        },
        new()
        {
            Id = "sprint_max_power",
            Label = "Sprint peak power",
            Unit = "W/kg",
            Decimals = 1,
            Better = Direction.Higher,
            Quality = Quality.Acceleration,
            Rule = TrialRule.Mean,
            RuleReason = "The best of several fitted values is mostly the luckiest fit; the mean is not.",
            FromTrials = day => Values(day, pools, PeakPower),
            PlausibleLow = 6,
            PlausibleHigh = 35,
            Meaning = "Highest horizontal power per body mass of the fitted run, air drag left out (it adds about 2 %).",
            Formula = "P = V²/(4·T) per body mass, V [m/s], T [s]",
            Sources = ["samozino2016"],
        },
    ];

    public static SprintReading Read(SprintTrial trial, SplitErrorPools? pools)
    {
        var reading = SprintReading.Of(trial);
        return pools?.Apply(reading) ?? reading;
    }

    private static Func<AthleteDay, IEnumerable<TrialValue>> Momentum(SplitErrorPools? pools)
        => day => day.BodyMass is { Kilograms: > 0 } mass
            ? Values(day, pools, curve => curve.MomentumAt(TenYards, mass)).Select(v => v with { Doubt = SprintReading.Join(v.Doubt, BodyMassAge.Remark(day)) })
            : [];

    private static IEnumerable<TrialValue> Values(AthleteDay day, SplitErrorPools? pools, Func<SprintCurve, Estimate> quantity)
    {
        foreach (var trial in day.Of<SprintTrial>())
        {
            var reading = Read(trial, pools);
            if (reading.Fit.Curve is not { } curve) continue;
            var estimate = quantity(curve);
            yield return new(estimate.Value, estimate.StandardError, reading.Series, reading.Doubt, curve.DegreesOfFreedom);
        }
    }

    private static Estimate PeakPower(SprintCurve curve)
    {
        var (v, tau) = (curve.TopSpeed.Value, curve.TimeConstant.Value);
        return curve.Carry(v * v / (4 * tau), v / (2 * tau), -v * v / (4 * tau * tau), "peak power per body mass, no air drag");
    }
}
