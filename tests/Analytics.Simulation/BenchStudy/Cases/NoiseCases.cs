using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Simulation.BenchStudy.Squads;

namespace Analytics.Simulation.BenchStudy.Cases;

/// <summary>Sketches of which nothing returns, by one value a day and by attempt, on one scale and on several; and the trap of noise times body mass.</summary>
public static class NoiseCases
{
    public static IReadOnlyList<BenchCase> All { get; } =
    [
        Noise("one value a day, normal", s => Day(s, "noise_day", d => 100 + 10 * Draws.OfDay(s, "noise day", d))),
        Noise("one value a day, skewed", s => Day(s, "noise_skewed", d => 10 * Math.Exp(0.6 * Draws.OfDay(s, "noise skewed", d)))),
        Noise("every jump, mean of the day", s => Jumps(s, "noise_jumps_mean", JumpKind.Countermovement)),
        Noise("every jump, best of the day", s => Jumps(s, "noise_jumps_best", JumpKind.Countermovement) with { Rule = TrialRule.Best }),
        Noise("every drop jump, off two boxes", s => Jumps(s, "noise_drops", JumpKind.Drop)),
        Noise("every sprint, some by hand", Sprints),
        TimesMass(10),
        TimesMass(30),
        TimesMass(60),
    ];

    private static BenchCase Noise(string name, Func<BenchSeason, MetricSketch> sketch) => new("Noise: " + name, TruthKind.Noise, sketch) { IsRequired = true, InEverySquad = name.Contains("normal", StringComparison.Ordinal) || name.Contains("mean", StringComparison.Ordinal), Icc = (_, _) => 0 };

    private static BenchCase TimesMass(int percent) => new(FormattableString.Invariant($"Body mass times noise of {percent} %"), TruthKind.NoiseTimesMass,
        s => Sketch.Day($"mass_noise_{percent}", "Body mass times noise", "kg", Direction.Higher, (0, 1000),
            day => (AnyQuantity?)day.BodyMass * Math.Max(0.01, 1 + percent / 100.0 * Draws.OfDay(s, "mass noise", day))).Patient());

    private static MetricSketch Day(BenchSeason season, string id, Func<AthleteDay, double> value)
        => Sketch.Day(id, "Noise of the day", "1", Direction.Higher, (0, 200), day => value(day)).Patient();

    private static MetricSketch Jumps(BenchSeason season, string id, JumpKind kind) => Sketch.Each<JumpTrial>(id, "Noise of the jump", "1", Direction.Higher, (0, 200),
        (jump, day) => jump.Kind == kind ? 100 + 10 * Draws.OfAttempt(season, id, day, jump.Attempt) : null).Patient();

    private static MetricSketch Sprints(BenchSeason season) => Sketch.Each<SprintTrial>("noise_sprints", "Noise of the sprint", "1", Direction.Lower, (0, 200),
        (run, day) => 100 + 10 * Draws.OfAttempt(season, "noise sprint", day, run.Attempt)).Patient();

    /// <summary>Without a limit of time: a busy machine must not give up a formula, so that a study is the same on every machine.</summary>
    internal static MetricSketch Patient(this MetricSketch sketch) => sketch with { Limits = SketchLimits.None };
}
