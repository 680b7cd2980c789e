using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sketching;

/// <summary>Short ways to sketches and days for tests.</summary>
internal static class Sketches
{
    /// <summary>A sketch of one value a day.</summary>
    public static MetricSketch OfDay(Func<AthleteDay, AnyQuantity?> value, string unit = "kg", string id = "own_idea")
        => Sketch.Day(id, "Own idea", unit, Direction.Higher, (0, 1000), value);

    /// <summary>A sketch of one value a set.</summary>
    public static MetricSketch OfSet(Func<LiftSet, AthleteDay, AnyQuantity?> value, string unit = "kg")
        => Sketch.Each("own_idea", "Own idea", unit, Direction.Higher, (0, 1000), value);

    /// <summary>A day with sets of these loads.</summary>
    public static AthleteDay Lifted(string id, params double[] kilograms)
        => Days.With([.. kilograms.Select(k => Days.Lift("back_squat", k, 1))]) with { AthleteId = id };

    /// <summary>The values of some days.</summary>
    public static double[] Values(this MetricSketch sketch, params AthleteDay[] days) => [.. days.SelectMany(d => sketch.Metric.FromTrials(d)).Select(v => v.Value)];
}
