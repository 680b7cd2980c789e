using Analytics.Simulation.Demo.Files;

namespace Analytics.Simulation.Demo.Testing;

/// <summary>Countermovement, drop and hurdle jumps on a contact mat, and the standing long jump by tape.</summary>
public static class JumpTest
{
    /// <summary>Standard gravity, m/s²: the mat sees flight time, h = g t² / 8.</summary>
    private const double Gravity = 9.80665;

    private const double MetresPerInch = 0.0254;

    public static Sheet Sheet()
        => new("jumps", "athlete_id", "jump", "method", "attempt", "height_in", "distance_in", "flight_ms", "contact_ms", "obstacle_in", "tester");

    public static void Run(TestBench bench, Sheet sheet)
    {
        Countermovement(bench, sheet);
        Rebound(bench, sheet, "drop", bench.Player.Norm.BoxInches, 1, 1);
        // Hurdles from April on, for those light enough; rebounds there are shorter in contact and lower.
        if (bench.Day >= SeasonCalendar.April && bench.Player.Norm.BoxInches > 12) Rebound(bench, sheet, "hurdle", 24, 0.93, 0.90);
        LongJump(bench, sheet);
    }

    /// <summary>Flight time in whole milliseconds; in March the height was copied from the display instead.</summary>
    private static void Countermovement(TestBench bench, Sheet sheet)
    {
        if (!bench.Does("countermovement")) return;
        var random = bench.Random("countermovement");
        var attempts = bench.Attempts("countermovement", TestNoise.Jump.Attempts);
        for (var attempt = 1; attempt <= attempts; attempt++)
        {
            var inches = bench.Form.JumpInches * (1 + TestNoise.Jump.Trial * random.Normal());
            if (bench.Day == SeasonCalendar.March) sheet.Add(bench.Player.Id, "countermovement", "mat", attempt, Files.Sheet.Fixed(inches, 1), null, null, null, null, bench.Tester);
            else sheet.Add(bench.Player.Id, "countermovement", "mat", attempt, null, null, Flight(inches), null, null, bench.Tester);
        }
    }

    private static void Rebound(TestBench bench, Sheet sheet, string jump, double obstacle, double heightShare, double contactShare)
    {
        if (!bench.Does(jump)) return;
        var random = bench.Random(jump);
        var attempts = bench.Attempts(jump, TestNoise.Rebound.Attempts);
        for (var attempt = 1; attempt <= attempts; attempt++)
        {
            var inches = heightShare * bench.Form.DropJumpInches * (1 + TestNoise.Rebound.Trial * random.Normal());
            var contact = contactShare * bench.Form.ContactMilliseconds * (1 + TestNoise.Contact.Trial * random.Normal());
            sheet.Add(bench.Player.Id, jump, "mat", attempt, null, null, Flight(inches), Files.Sheet.Fixed(contact, 0), obstacle, bench.Tester);
        }
    }

    private static void LongJump(TestBench bench, Sheet sheet)
    {
        if (!bench.Does("standing_long")) return;
        var random = bench.Random("standing_long");
        var attempts = bench.Attempts("standing_long", TestNoise.LongJump.Attempts);
        for (var attempt = 1; attempt <= attempts; attempt++)
        {
            var inches = bench.Form.LongJumpInches * (1 + TestNoise.LongJump.Trial * random.Normal());
            sheet.Add(bench.Player.Id, "standing_long", "tape", attempt, null, Files.Sheet.Fixed(inches, 0), null, null, null, bench.Tester);
        }
    }

    private static string Flight(double inches)
        => Files.Sheet.Fixed(1000 * Math.Sqrt(8 * inches * MetresPerInch / Gravity), 0);
}
