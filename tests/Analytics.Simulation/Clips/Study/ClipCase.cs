using Analytics.Metrics.Motion;
using Analytics.Simulation.Clips.Camera;
using Analytics.Simulation.Clips.Reading;

namespace Analytics.Simulation.Clips.Study;

/// <summary>How the repetitions of one case are filmed and read.</summary>
/// <param name="Name">In words.</param>
/// <param name="RateHertz">Frames a second.</param>
public sealed record ClipCase(string Name, double RateHertz)
{
    /// <summary>Landmarks clicked.</summary>
    public IReadOnlyList<MarkerRole> Markers { get; init; } = MarkerNames.Full;

    /// <summary>SD of one click.</summary>
    public double ClickSdPixels { get; init; } = 1.5;

    /// <summary>Share of frames the camera loses.</summary>
    public double DropChance { get; init; } = 0.01;

    /// <summary>Read-out time of the camera, known to the reader, the rows of events noted.</summary>
    public double ReadOutSeconds { get; init; }

    /// <summary>How much nearer than the stick the player runs.</summary>
    public double NearerMetres { get; init; } = 0.5;

    /// <summary>Whether the season was told so.</summary>
    public bool OffsetTold { get; init; } = true;

    /// <summary>Chance that an event is read one frame off.</summary>
    public double SlipChance { get; init; } = 0.3;

    /// <summary>Repetitions filmed and read twice on one day by one reader; their repeats are pooled.</summary>
    public int Day { get; init; } = 20;

    internal PinholeCamera Camera(bool left) => new() { ReadOutSeconds = ReadOutSeconds, NearerMetres = NearerMetres, ToTheLeft = left };

    /// <summary>The cases of the document.</summary>
    public static IReadOnlyList<ClipCase> All { get; } =
    [
        .. new[] { 60.0, 120, 240 }.Select(rate => new ClipCase("all landmarks", rate)),
        .. new[] { 60.0, 240 }.Select(rate => new ClipCase("trunk and legs only", rate) { Markers = MarkerNames.Few }),
        .. new[] { 60.0, 240 }.Select(rate => new ClipCase("rows read out over 16 ms, known", rate) { ReadOutSeconds = 0.016 }),
        new ClipCase("clicks of 4 px", 240) { ClickSdPixels = 4 },
        new ClipCase("5 % of frames lost", 240) { DropChance = 0.05 },
        new ClipCase("player 0.5 m nearer than the stick, not told", 240) { OffsetTold = false },
    ];
}
