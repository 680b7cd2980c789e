using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Quantities;

namespace Analytics.Simulation.BenchStudy.Cases;

/// <summary>Sketches that say what the library says already, made from the same trials: rescaled metrics, and two metrics put together.</summary>
public static class CopyCases
{
    // Middle and spread over the demo's squad, rounded; the sum is of standard scores by these constants.
    private const double JumpMiddle = 68, JumpSpread = 9, SquatMiddle = 185, SquatSpread = 24;

    public static IReadOnlyList<BenchCase> All { get; } =
    [
        .. Of("cmj_height", "cm", "in", 68),
        .. Of("back_squat_1rm", "kg", "lb", 185),
        .. Of("drop_jump_rsi", "m/s", "km/h", 1.7),
        new("Jump and squat, sum of standard scores", TruthKind.Blend, _ => Sketch.Day("sum_jump_squat", "Jump and squat", "1", Direction.Higher, (-10, 10),
            day => (day.Value("cmj_height")?.In("cm") - JumpMiddle) / JumpSpread + (day.Value("back_squat_1rm")?.In("kg") - SquatMiddle) / SquatSpread is { } sum ? sum : null).Patient()) { InEverySquad = true },
        new("Squat over body mass, once more", TruthKind.Blend, _ => Sketch.Day("squat_for_mass", "Squat for mass", "1", Direction.Higher, (0.1, 10),
            day => day.Value("back_squat_1rm") / day.Value("body_mass")).Patient()),
        new("Jump height times body mass", TruthKind.Blend, _ => Sketch.Day("jump_times_mass", "Jump times mass", "kg·m", Direction.Higher, (0.1, 1000),
            day => day.Value("cmj_height") * day.Value("body_mass")).Patient()),
        new("Squat over the square root of body mass", TruthKind.Blend, _ => Sketch.Day("squat_root_mass", "Squat over root of mass", "kg^0.5", Direction.Higher, (0.1, 1000),
            day => day.Value("back_squat_1rm") / day.Value("body_mass")?.ToPower(0.5)).Patient()),
    ];

    private static IEnumerable<BenchCase> Of(string metric, string unit, string otherUnit, double middle)
    {
        BenchCase Copy(string how, string id, string unitOfCopy, Direction better, Func<AnyQuantity, AnyQuantity> copy) => new($"{MetricCatalogue.Get(metric).Label}, {how}", TruthKind.Copy,
            _ => Sketch.Day($"copy_{id}_{metric}", $"Copy of {metric}", unitOfCopy, better, (-1e5, 1e5), day => day.Value(metric) is { } v ? copy(v) : null).Patient()) { IsRequired = true, OwnShare = 0, InEverySquad = id == "negative" };

        yield return Copy("another unit", "unit", otherUnit, Direction.Higher, v => v);
        yield return Copy("affine", "affine", "1", Direction.Higher, v => 50 + 10 * (v.In(unit) - middle) / middle);
        yield return Copy("square", "power", "1", Direction.Higher, v => Math.Pow(v.In(unit), 2));
        yield return Copy("logarithm", "log", "1", Direction.Higher, v => Math.Log(v.In(unit)));
        yield return Copy("reciprocal, less is better", "inverse", "1", Direction.Lower, v => middle / v.In(unit));
        yield return Copy("sign turned, less is better", "negative", "1", Direction.Lower, v => -v.In(unit));
    }
}
