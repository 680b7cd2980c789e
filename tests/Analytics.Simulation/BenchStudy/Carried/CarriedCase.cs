using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Simulation.BenchStudy.Cases;
using Analytics.Simulation.BenchStudy.Squads;
using Analytics.Simulation.Demo.Testing;

namespace Analytics.Simulation.BenchStudy.Carried;

/// <summary>A product or ratio of tests whose error from day to day the generator knows.</summary>
/// <param name="Name">In words.</param>
/// <param name="TrueShare">True error between days, as a share of the value.</param>
/// <param name="Value">The formula.</param>
/// <param name="Unit">Its unit.</param>
public sealed record CarriedCase(string Name, double TrueShare, string Unit, Func<AthleteDay, AnyQuantity?> Value)
{
    /// <summary>The own error that is added to see whether it is found, in errors carried.</summary>
    public const double Added = 2;

    // Two tests of one day have a good day together: the square of 0.4, see DayForm.
    private const double FormTogether = 0.16;

    // The bar goes up in steps of 5 lb and stands at the last one below the day's best, near 250 lb: a uniform error.
    private const double BarStep = 5 / 250.0;

    private static readonly double s_clean = Math.Sqrt(Square(TestNoise.Clean.OfBest) + Square(BarStep) / 12), s_jump = TestNoise.Jump.OfBest, s_mass = TestNoise.BodyMass.Day;

    private static readonly double s_shared = 2 * FormTogether * TestNoise.Clean.Day * TestNoise.Jump.Day;

    public static IReadOnlyList<CarriedCase> All { get; } =
    [
        new("clean over body mass", Math.Sqrt(Square(s_clean) + Square(s_mass)), "1", day => day.Value("power_clean_1rm") / day.Value("body_mass")),
        new("jump height times body mass", Math.Sqrt(Square(s_jump) + Square(s_mass)), "kg·m", day => day.Value("cmj_height") * day.Value("body_mass")),
        new("clean times jump height", Math.Sqrt(Square(s_clean) + Square(s_jump) + s_shared), "kg·m", day => day.Value("power_clean_1rm") * day.Value("cmj_height")),
        new("clean over jump height", Math.Sqrt(Square(s_clean) + Square(s_jump) - s_shared), "kg/m", day => day.Value("power_clean_1rm") / day.Value("cmj_height")),
    ];

    /// <summary>The sketch, with an error of its own of so many true errors.</summary>
    public MetricSketch Sketch(BenchSeason season, double own) => Metrics.Sketching.Sketch.Day(own > 0 ? "with_own_error" : "carried", Name, Unit, Direction.Higher, (1e-3, 1e6),
        day => own > 0 ? Value(day) * Math.Max(0.01, 1 + own * TrueShare * Draws.OfDay(season, "own error " + Name, day)) : Value(day)).Patient();

    private static double Square(double v) => v * v;
}
