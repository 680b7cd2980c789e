using Analytics.Metrics.Motion;
using Analytics.Simulation.Clips.Motion;

namespace Analytics.Simulation.Clips.Camera;

/// <summary>A run as one camera recorded it, before anybody reads it.</summary>
/// <param name="Run">What truly happened.</param>
/// <param name="Camera">The camera.</param>
/// <param name="FrameSeconds">When each frame began, on the clock of the run.</param>
public sealed record Recording(RunIntoContact Run, PinholeCamera Camera, double[] FrameSeconds)
{
    /// <summary>Length of the stick, upright at the right of the start.</summary>
    public const double StickMetres = 2;

    /// <summary>Time stamps as the file of the clip holds them: from its first frame.</summary>
    public double[] Stamps => [.. FrameSeconds.Select(t => t - FrameSeconds[0])];

    /// <summary>True pixel places of landmarks by frame.</summary>
    public IReadOnlyDictionary<MarkerRole, (double X, double Y)[]> Picture(IReadOnlyList<MarkerRole> roles)
        => Camera.ReadOutSeconds == 0 ? AllAtOnce(roles) : roles.ToDictionary(r => r, r => FrameSeconds.Select(t => Camera.Draw(u => Run.Landmarks(u)[r], t)).ToArray());

    /// <summary>True pixel place of an end of the stick.</summary>
    public (double X, double Y) Stick(MarkerRole end) => Camera.Draw(new(Camera.AxisMetres - 2, end == MarkerRole.CalibrationTo ? StickMetres + 0.1 : 0.1), stick: true);

    /// <summary>Row of the picture in which an event shows: first movement at the shoulder, contact at the shoulder too.</summary>
    public double RowOf(double eventSeconds) => Camera.Draw(Run.Landmarks(eventSeconds)[MarkerRole.Shoulder]).Y;

    /// <summary>First frame in which an event is seen; null when the clip ends before.</summary>
    public int? FrameOf(double eventSeconds)
    {
        var delay = Camera.Delay(RowOf(eventSeconds));
        var frame = Array.FindIndex(FrameSeconds, t => t + delay >= eventSeconds);
        return frame < 0 ? null : frame;
    }

    private Dictionary<MarkerRole, (double X, double Y)[]> AllAtOnce(IReadOnlyList<MarkerRole> roles)
    {
        var picture = roles.ToDictionary(r => r, _ => new (double X, double Y)[FrameSeconds.Length]);
        for (var i = 0; i < FrameSeconds.Length; i++)
        {
            var at = Run.Landmarks(FrameSeconds[i]);
            foreach (var role in roles) picture[role][i] = Camera.Draw(at[role]);
        }
        return picture;
    }
}
