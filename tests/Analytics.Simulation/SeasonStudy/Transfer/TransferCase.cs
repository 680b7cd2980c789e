using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Demo.Testing;
using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.SeasonStudy.Transfer;

/// <summary>A pair of measures between whose true gains a correlation is planted.</summary>
/// <param name="WeightRoom">Identifier of the weight-room metric.</param>
/// <param name="Field">Identifier of the field metric.</param>
/// <param name="From">The weight-room quality.</param>
/// <param name="To">The qualities behind the field metric, with the SD each gives it.</param>
public sealed record TransferCase(string WeightRoom, string Field, TrainedQuality From, params IReadOnlyList<(TrainedQuality Quality, double Part)> To)
{
    private const double Yards10 = 9.144, Speed = 9, TimeConstant = 1.03, Lead = 0.22, Step = 1e-4;

    /// <summary>The pairs reported; agility, run twice by the clock with small gains, is the noisy one.</summary>
    public static IReadOnlyList<TransferCase> All { get; } =
    [
        new("back_squat_1rm", "sprint_10yd", TrainedQuality.Squat,
            (TrainedQuality.MaximalSpeed, Part(TrainedQuality.MaximalSpeed, 1 + Step, 1)), (TrainedQuality.TimeConstant, Part(TrainedQuality.TimeConstant, 1, 1 - Step))),
        new("power_clean_1rm", "cmj_height", TrainedQuality.Clean, (TrainedQuality.Jump, 1)),
        new("bench_press_1rm", "pro_agility", TrainedQuality.Bench, (TrainedQuality.Agility, 1)),
    ];

    /// <summary>The squat beside top speed is watched too: its qualities are part of the first link.</summary>
    public static IReadOnlyList<(string WeightRoom, string Field)> Watched { get; } = [.. All.Select(c => (c.WeightRoom, c.Field)), ("back_squat_1rm", "max_speed")];

    /// <summary>Seasons in which all pairs are linked alike.</summary>
    public static Scenario Scenario(double correlation, bool withForm, bool withMess, bool withEndRetest) => new(
        FormattableString.Invariant($"links {correlation:0.0}, {(withForm ? "gains and forms" : "gains only")}, {(withMess ? "usual mess" : "nothing missing")}{(withEndRetest ? ", retest at the end" : "")}"),
        new DemoOptions { WithMess = withMess, WithClips = false, WithEndRetest = withEndRetest, Links = correlation == 0 && !withForm ? [] : [.. All.Select(c => new PlantedLink(c.From, correlation, withForm, c.To))] });

    // What the gain of a quality gives to the time over 10 yd: relative change of the time for a small gain, times the SD of the gains.
    private static double Part(TrainedQuality quality, double speed, double constant)
    {
        var time = SprintModel.ClockTime(Yards10, Speed, TimeConstant, Lead);
        return (time - SprintModel.ClockTime(Yards10, Speed * speed, TimeConstant * constant, Lead)) / time / Step * SquadResponse.Of(quality).OverallDeviation;
    }
}
