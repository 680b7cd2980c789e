using System.Globalization;
using Analytics.Metrics.Motion;
using Analytics.Simulation.Clips;
using Analytics.Simulation.Clips.Camera;
using Analytics.Simulation.Clips.Motion;
using Analytics.Simulation.Clips.Reading;
using Analytics.Simulation.Demo.Files;
using Analytics.Simulation.Demo.Truth;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Testing;

/// <summary>
/// Eight tenths of a yard into a bag or a team mate, filmed by a phone at 240 Hz (two players by another at 60 Hz), twelve players on the last day. Some clips lose frames and have time stamps, some are read twice, now and then a marker is
/// hidden for a few frames.
/// </summary>
public static class ContactDrill
{
    /// <summary>Gap of the drill.</summary>
    public const double GapYards = 0.8;

    /// <summary>Read-out time of the phones.</summary>
    public const double ReadOutSeconds = 0.010;

    /// <summary>How much nearer than the stick the players run.</summary>
    public const double NearerMetres = 0.5;

    private const double MetresPerYard = 0.9144;
    private static readonly int[] Slow = [20, 45];

    public static Sheet Sheet()
        => new("contact", "athlete_id", "attempt", "reading", "clip", "rate_hz", "first_movement_frame", "first_movement_row", "contact_frame", "contact_row", "gap_yd", "against", "travel");

    public static void Run(TestBench bench, Sheet sheet, List<Sheet> clips, List<ContactTruth> truths)
    {
        var player = bench.Player;
        if (bench.Day != SeasonCalendar.June || player.Index % 5 != 0 || !bench.Does("contact")) return;
        var random = bench.Random("contact");
        var stiff = random.Chance(0.5);
        for (var attempt = 1; attempt <= 2; attempt++)
        {
            var speed = bench.Form.SpeedMetresPerSecond * (1 + (TestNoise.Speed.Trial * random.Normal()));
            var constant = bench.Form.TimeConstantSeconds * (1 + (2 * TestNoise.TimeConstant.Trial * random.Normal()));
            var run = RunDraw.Draw(random, player.StatureInches * 0.0254, bench.Form.MassPounds * 0.45359237, speed, constant, GapYards * MetresPerYard, stiff);
            var name = string.Create(CultureInfo.InvariantCulture, $"{player.Id.ToLowerInvariant()}-{attempt}");
            var rate = Slow.Contains(player.Index) ? 60.0 : 240;
            var losesFrames = random.Chance(0.3);
            var camera = new PinholeCamera { ReadOutSeconds = ReadOutSeconds, NearerMetres = NearerMetres, ToTheLeft = attempt == 2 };
            var clip = new Recording(run, camera, FrameTimes.Draw(rate, -0.1, run.ContactSeconds + 0.22, random, losesFrames ? 0.02 : 0));
            clips.Add(Points(name, new Digitiser(1.5, HiddenChance: 0.08, HiddenFrames: 3).Read(clip, MarkerNames.Few, random)));
            if (losesFrames) clips.Add(Stamps(name, clip.Stamps));
            Write(bench, sheet, clip, name, attempt, losesFrames ? null : rate, random);
            truths.Add(new(bench.Day, player.Index, attempt, name, run));
        }
    }

    private static void Write(TestBench bench, Sheet sheet, Recording clip, string name, int attempt, double? rate, RandomNumbers random)
    {
        // Every third player's clips were read on a second evening too.
        var readings = bench.Player.Index % 3 == 0 ? 2 : 1;
        var against = bench.Player.Index % 4 == 0 ? "TC" + (bench.Player.Index + 2).ToString("00", CultureInfo.InvariantCulture) : "bag";
        double firstRow = clip.RowOf(0), contactRow = clip.RowOf(clip.Run.ContactSeconds);
        for (var reading = 1; reading <= readings; reading++)
        {
            var (first, contact) = new EventReader(0.4).Read(clip, random);
            sheet.Add(bench.Player.Id, attempt, readings > 1 ? reading : null, name, rate, first, Files.Sheet.Fixed(firstRow, 0), contact, Files.Sheet.Fixed(contactRow, 0), GapYards, against, clip.Camera.ToTheLeft ? "left" : "right");
        }
    }

    private static Sheet Points(string name, IReadOnlyList<PixelTrack> tracks)
    {
        var sheet = new Sheet(name, ["frame", .. tracks.SelectMany(t => new[] { t.Name + "_x_px", t.Name + "_y_px" })]);
        for (var i = 0; i < tracks[0].Count; i++)
            sheet.Add([i, .. tracks.SelectMany(t => new object?[] { t.XPixels[i], t.YPixels[i] })]);
        return sheet;
    }

    private static Sheet Stamps(string name, double[] seconds)
    {
        var sheet = new Sheet(name + ".times", "frame", "time_s");
        for (var i = 0; i < seconds.Length; i++) sheet.Add(i, Files.Sheet.Fixed(seconds[i], 5));
        return sheet;
    }
}
