using Analytics.Simulation.Demo.Files;
using Analytics.Simulation.Demo.Truth;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Testing;

/// <summary>
/// Forty yards from a three-point start, the clock started by the hand leaving the ground, gates at 5, 10, 20 and
/// 40 yards. Hand times read less: 0.22 s (SD 0.07) in the study of Mann and others (2015), 10 and 40 yards only.
/// </summary>
public static class SprintTest
{
    private const double MetresPerYard = 0.9144;

    private static readonly int[] GateYards = [5, 10, 20, 40];

    public static Sheet Sheet()
        => new("sprints", "athlete_id", "attempt", "timing", "start", "t_5yd_s", "t_10yd_s", "t_20yd_s", "t_40yd_s", "tester");

    public static void Run(TestBench bench, Sheet sheet, List<RunTruth> runs)
    {
        if (!bench.Does("sprint")) return;
        var random = bench.Random("sprint");
        var byHand = bench.Attendance.HandTimed(bench.Player, bench.Day);
        var attempts = bench.Attempts("sprint", TestNoise.Speed.Attempts);
        for (var attempt = 1; attempt <= attempts; attempt++)
        {
            var speed = bench.Form.SpeedMetresPerSecond * (1 + TestNoise.Speed.Trial * random.Normal());
            var constant = bench.Form.TimeConstantSeconds * (1 + TestNoise.TimeConstant.Trial * random.Normal());
            var stray = TestNoise.StartLeadMetres * random.Normal();
            var lead = bench.Player.StartLeadMetres == 0 ? 0 : Math.Max(0.02, bench.Player.StartLeadMetres + stray);
            var times = new double?[GateYards.Length];
            for (var gate = 0; gate < GateYards.Length; gate++)
            {
                var time = SprintModel.ClockTime(GateYards[gate] * MetresPerYard, speed, constant, lead);
                times[gate] = time + TestNoise.GateSeconds * random.Normal();
            }

            if (byHand) times = ReadByHand(times, random);
            sheet.Add(bench.Player.Id, attempt, byHand ? "hand" : "electronic", "three_point_hand", Cell(times[0]), Cell(times[1]), Cell(times[2]), Cell(times[3]), bench.Tester);
            runs.Add(new RunTruth(bench.Day, bench.Player.Index, attempt, speed, constant, lead));
        }
    }

    /// <summary>A stopwatch starts late by the timer's reaction; two splits are all a thumb can take.</summary>
    private static double?[] ReadByHand(double?[] times, RandomNumbers random)
    {
        var late = random.Normal(0.22, 0.07);
        return [null, times[1] - late, null, times[3] - late + 0.03 * random.Normal()];
    }

    private static string? Cell(double? seconds) => seconds is { } value ? Files.Sheet.Fixed(value, 2) : null;
}
