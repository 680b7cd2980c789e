using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Demo.Testing;

namespace Analytics.Simulation.ErrorRates;

/// <summary>A metric of the catalogue together with the truth it speaks about.</summary>
/// <param name="Id">Identifier in the catalogue.</param>
/// <param name="Truth">True value of an athlete of that ability, in the metric's catalogue unit.</param>
/// <param name="Qualities">What has to stay the same for the truth to stay the same.</param>
public sealed record JudgedMetric(string Id, Func<Player, Ability, double> Truth, params IReadOnlyList<TrainedQuality> Qualities)
{
    private const double KilogramsPerPound = 0.45359237, CentimetresPerInch = 2.54, MetresPerYard = 0.9144;

    public static IReadOnlyList<JudgedMetric> All { get; } =
    [
        new("body_mass", (_, a) => a.MassPounds * KilogramsPerPound, TrainedQuality.BodyMass),
        new("back_squat_1rm", (_, a) => a.SquatPounds * KilogramsPerPound, TrainedQuality.Squat),
        new("bench_press_1rm", (_, a) => a.BenchPounds * KilogramsPerPound, TrainedQuality.Bench),
        new("power_clean_1rm", (_, a) => a.CleanPounds * KilogramsPerPound, TrainedQuality.Clean),
        new("cmj_height", (_, a) => a.JumpInches * CentimetresPerInch, TrainedQuality.Jump),
        new("standing_long_jump", (_, a) => a.LongJumpInches * CentimetresPerInch, TrainedQuality.LongJump),
        new("drop_jump_rsi", (_, a) => a.ReactiveIndex, TrainedQuality.Reactive),
        new("throw_overhead_back", (_, a) => a.ThrowMetres, TrainedQuality.Throw),
        new("sprint_10yd", (p, a) => ClockTime(10, p, a), TrainedQuality.MaximalSpeed, TrainedQuality.TimeConstant),
        new("sprint_40yd", (p, a) => ClockTime(40, p, a), TrainedQuality.MaximalSpeed, TrainedQuality.TimeConstant),
        new("max_speed", (_, a) => a.SpeedMetresPerSecond, TrainedQuality.MaximalSpeed),
        new("acceleration_time_constant", (_, a) => a.TimeConstantSeconds, TrainedQuality.TimeConstant),
        new("momentum_10yd", (p, a) => a.MassPounds * KilogramsPerPound * SprintModel.SpeedAt(10 * MetresPerYard + p.StartLeadMetres, a.SpeedMetresPerSecond, a.TimeConstantSeconds),
            TrainedQuality.BodyMass, TrainedQuality.MaximalSpeed, TrainedQuality.TimeConstant),
        new("pro_agility", (_, a) => a.AgilitySeconds, TrainedQuality.Agility),
    ];

    public static JudgedMetric Get(string id) => All.First(m => m.Id == id);

    public bool Unchanged(Player player, int from, int to) => Qualities.All(q => player.Unchanged(q, from, to));

    private static double ClockTime(int yards, Player player, Ability ability)
        => SprintModel.ClockTime(yards * MetresPerYard, ability.SpeedMetresPerSecond, ability.TimeConstantSeconds, player.StartLeadMetres);
}
