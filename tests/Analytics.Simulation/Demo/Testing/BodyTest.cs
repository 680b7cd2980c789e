using Analytics.Simulation.Demo.Files;

namespace Analytics.Simulation.Demo.Testing;

/// <summary>Weighing, to a tenth of a pound.</summary>
public static class BodyTest
{
    public static Sheet Sheet() => new("body", "athlete_id", "mass_lb");

    public static void Run(TestBench bench, Sheet sheet)
    {
        if (bench.Does("body")) sheet.Add(bench.Player.Id, Files.Sheet.Fixed(bench.Form.MassPounds, 1));
    }
}
