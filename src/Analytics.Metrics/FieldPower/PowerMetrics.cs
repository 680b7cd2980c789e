using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Jumping;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.FieldPower;

/// <summary>Every field-power metric, in report order.</summary>
public static class PowerMetrics
{
    /// <summary>Standing long jump distance.</summary>
    public static Metric StandingLong { get; } = new()
    {
        Id = "standing_long_jump",
        Label = "Standing long jump",
        Unit = "cm",
        Decimals = 0,
        Better = Direction.Higher,
        Quality = Quality.ExplosivePower,
        Rule = TrialRule.Best,
        RuleReason = "A distance test judged by its best mark, as in competition; give everyone the same number of attempts.",
        FromTrials = day => day.Of<JumpTrial>()
            .Where(j => j.Kind == JumpKind.StandingLong)
            .SelectMany(j => j.Distance is { } d ? [new TrialValue(d.Centimetres, Series: JumpReading.Name(j.Method))] : Array.Empty<TrialValue>()),
        PlausibleLow = 80,
        PlausibleHigh = 400,
        Meaning = "How far the body is thrown forward from a standing start; horizontal explosive power.",
        Formula = "d [cm], line to nearest heel mark",
        Sources = ["markovic2004"],
    };

    /// <summary>Stair power.</summary>
    public static Metric Stair { get; } = new()
    {
        Id = "stair_power",
        Label = "Stair power",
        Unit = "W",
        Decimals = 0,
        Better = Direction.Higher,
        Quality = Quality.ExplosivePower,
        Rule = TrialRule.Best,
        RuleReason = "The published protocol keeps the best of three runs.",
        FromTrials = StairRuns,
        PlausibleLow = 400,
        PlausibleHigh = 4000,
        Meaning = "Mean power of carrying the body up a measured stair at a run; heavy athletes score high by mass alone.",
        Formula = "P [W] = m [kg] · g · D [m] / t [s]; D rise between the timed steps, g = 9.81 m/s²; each rise is its own series",
        Sources = ["kalamen1968", "margaria1966"],
    };

    /// <summary>Mean bar power of a timed clean pull.</summary>
    public static Metric CleanBar { get; } = new()
    {
        Id = "clean_bar_power",
        Label = "Clean mean bar power",
        Unit = "W",
        Decimals = 0,
        Better = Direction.Higher,
        Quality = Quality.ExplosivePower,
        Rule = TrialRule.Best,
        RuleReason = "Power peaks at some load between; the best set is the one near that load.",
        FromTrials = CleanPulls,
        PlausibleLow = 200,
        PlausibleHigh = 4000,
        Meaning = "Mean power put into the bar during the pull of a clean; bar only, never to be compared with power of the body or of both.",
        Formula = "P [W] = m [kg] · g · Δh [m] / Δt [s]; m bar with plates, Δh its rise, Δt the time, g = 9.81 m/s²; the energy of motion is not in it",
        Sources = ["garhammer1993"],
    };

    /// <summary>All field-power metrics.</summary>
    public static IReadOnlyList<Metric> All { get; } = [StandingLong, .. ThrowMetrics.All, Stair, CleanBar];

    private static IEnumerable<TrialValue> StairRuns(AthleteDay day)
    {
        if (day.BodyMass is not { } mass || mass.Kilograms <= 0) yield break;
        foreach (var run in day.Of<StairTrial>().Where(r => r.Rise > Length.Zero && r.Time > Duration.Zero))
            yield return new(StairPower.Mean(mass, run.Rise, run.Time).Watts,
                Series: string.Create(CultureInfo.InvariantCulture, $"rise {run.Rise.Metres:0.00} m"), Doubt: BodyMassAge.Remark(day));
    }

    private static IEnumerable<TrialValue> CleanPulls(AthleteDay day)
        => from set in day.Of<LiftSet>()
           where set.Lift.Contains("clean", StringComparison.Ordinal) && set.Load > Mass.Zero
           where set.BarRise > Length.Zero && set.PullTime > Duration.Zero
           select new TrialValue(BarPower.Mean(set.Load, set.BarRise!.Value, set.PullTime!.Value).Watts, Series: set.Lift.Replace('_', ' '));
}
