using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Strength;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Simulation.BenchStudy.Cases;
using Analytics.Simulation.BenchStudy.Squads;
using Analytics.Simulation.Demo.Testing;
using Sketching = Analytics.Metrics.Sketching.Sketch;

namespace Analytics.Simulation.BenchStudy.Carried;

/// <summary>A product or ratio of tests whose error from day to day the generator knows.</summary>
/// <param name="Name">In words.</param>
/// <param name="TrueShare">True error between days, as a share of the value.</param>
/// <param name="Formula">The sketch by its identifier and a factor of the day. Written on trials, which are the quickest to ask thousands of times.</param>
public sealed record CarriedCase(string Name, double TrueShare, Func<string, Func<AthleteDay, double>, MetricSketch> Formula)
{
    /// <summary>The own error that is added to see whether it is found, in errors carried.</summary>
    public const double Added = 2;

    // Two tests of one day have a good day together: the square of 0.4, see DayForm.
    private const double FormTogether = 0.16;

    // The bar goes up in steps of 5 lb and stands at the last one below the day's best, near 250 lb: a uniform error.
    private const double BarStep = 5 / 250.0;

    private static readonly AnyQuantity s_eighthOfGravity = AnyQuantity.From(9.80665 / 8, "m/s²");

    private static readonly double s_clean = Math.Sqrt(Square(TestNoise.Clean.OfBest) + Square(BarStep) / 12), s_jump = TestNoise.Jump.OfBest, s_mass = TestNoise.BodyMass.Day;

    private static readonly double s_shared = 2 * FormTogether * TestNoise.Clean.Day * TestNoise.Jump.Day;

    public static IReadOnlyList<CarriedCase> All { get; } =
    [
        new("clean over body mass", Root(Square(s_clean) + Square(s_mass)), Clean("kg/kg", (clean, day) => clean / day.BodyMass)),
        new("jump height times body mass", Root(Square(s_jump) + Square(s_mass)), Jump("kg·m", Direction.Higher, (height, day) => height * day.BodyMass)),
        new("clean times jump height", Root(Square(s_clean) + Square(s_jump) + s_shared), Jump("kg·m", Direction.Higher, (height, day) => height * BestClean(day))),
        // Of the attempts the best jump gives the lowest ratio.
        new("clean over jump height", Root(Square(s_clean) + Square(s_jump) - s_shared), Jump("kg/m", Direction.Lower, (height, day) => BestClean(day) / height)),
    ];

    /// <summary>The sketch, with an error of its own of so many true errors.</summary>
    public MetricSketch Sketch(BenchSeason season, double own)
        => Formula(own > 0 ? "with_own_error" : "carried", day => own > 0 ? Math.Max(0.01, 1 + own * TrueShare * Draws.OfDay(season, "own error " + Name, day)) : 1) with { Rule = TrialRule.Best, Limits = SketchLimits.None };

    private static Func<string, Func<AthleteDay, double>, MetricSketch> Clean(string unit, Func<AnyQuantity, AthleteDay, AnyQuantity?> value)
        => (id, factor) => Sketching.Each<LiftSet>(id, "Product or ratio", unit, Direction.Higher, (1e-3, 1e6), (set, day) => set.Lift == Lifts.PowerClean ? value(set.Load, day) * factor(day) : null);

    private static Func<string, Func<AthleteDay, double>, MetricSketch> Jump(string unit, Direction better, Func<AnyQuantity, AthleteDay, AnyQuantity?> value)
        => (id, factor) => Sketching.Each<JumpTrial>(id, "Product or ratio", unit, better, (1e-3, 1e6), (jump, day) => jump.Kind == JumpKind.Countermovement ? value(Height(jump), day) * factor(day) : null);

    private static AnyQuantity Height(JumpTrial jump) => jump.Height is { } height ? height : (AnyQuantity)jump.FlightTime!.Value * jump.FlightTime.Value * s_eighthOfGravity;

    private static AnyQuantity? BestClean(AthleteDay day)
    {
        AnyQuantity? best = null;
        foreach (var set in day.Of<LiftSet>())
            if (set.Lift == Lifts.PowerClean && !(best?.Si > set.Load.Kilograms)) best = set.Load;
        return best;
    }

    private static double Root(double v) => Math.Sqrt(v);

    private static double Square(double v) => v * v;
}
