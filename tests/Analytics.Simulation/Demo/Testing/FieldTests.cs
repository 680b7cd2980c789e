using Analytics.Simulation.Demo.Files;

namespace Analytics.Simulation.Demo.Testing;

/// <summary>5-10-5 shuttle by gates, first turn to the left, then to the right.</summary>
public static class AgilityTest
{
    public static Sheet Sheet() => new("agility", "athlete_id", "test", "attempt", "timing", "side", "time_s");

    public static void Run(TestBench bench, Sheet sheet)
    {
        if (!bench.Does("pro_agility")) return;
        var random = bench.Random("pro_agility");
        var attempts = bench.Attempts("pro_agility", TestNoise.Agility.Attempts);
        for (var attempt = 1; attempt <= attempts; attempt++)
        {
            var time = bench.Form.AgilitySeconds * (1 + TestNoise.Agility.Trial * random.Normal());
            sheet.Add(bench.Player.Id, "pro_agility", attempt, "electronic", attempt == 1 ? "left" : "right", Files.Sheet.Fixed(time, 2));
        }
    }
}

/// <summary>Backward overhead throw of a 5 kg ball.</summary>
public static class ThrowTest
{
    public static Sheet Sheet() => new("throws", "athlete_id", "throw", "attempt", "ball_kg", "distance_m", "tester");

    public static void Run(TestBench bench, Sheet sheet)
    {
        if (!bench.Does("overhead_back")) return;
        var random = bench.Random("overhead_back");
        var attempts = bench.Attempts("overhead_back", TestNoise.Throw.Attempts);
        for (var attempt = 1; attempt <= attempts; attempt++)
        {
            var distance = bench.Form.ThrowMetres * (1 + TestNoise.Throw.Trial * random.Normal());
            sheet.Add(bench.Player.Id, "overhead_back", attempt, 5, Files.Sheet.Fixed(distance, 2), bench.Tester);
        }
    }
}

/// <summary>Stair run, third to ninth step, in March only.</summary>
public static class StairTest
{
    /// <summary>Six steps of 17.4 cm, measured on these stairs.</summary>
    public const double RiseCentimetres = 104.4;

    public static Sheet Sheet() => new("stairs", "athlete_id", "attempt", "rise_cm", "time_s");

    public static void Run(TestBench bench, Sheet sheet)
    {
        if (bench.Day != SeasonCalendar.March || !bench.Does("stairs")) return;
        var random = bench.Random("stairs");
        var attempts = bench.Attempts("stairs", TestNoise.Stair.Attempts);
        for (var attempt = 1; attempt <= attempts; attempt++)
        {
            var time = bench.Form.StairSeconds * (1 + TestNoise.Stair.Trial * random.Normal());
            sheet.Add(bench.Player.Id, attempt, RiseCentimetres, Files.Sheet.Fixed(time, 3));
        }
    }
}
