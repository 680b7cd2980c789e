using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Contact;

/// <summary>A figure by frame, from points as digitised (filled ones left out), with the time at which the rows of the points were exposed.</summary>
internal sealed class ClipSamples
{
    // Fewest samples of a window; at low frame rates the window grows until it has them.
    private const int Fewest = 6;

    private readonly List<double> seconds = [];
    private readonly List<double> values = [];
    private double? variance = 0;

    private ClipSamples()
    {
    }

    /// <summary>SD of one sample; null when the error of a point is not known.</summary>
    private double? SampleSd => variance is { } v && seconds.Count > 0 ? Math.Sqrt(v / seconds.Count) : null;

    /// <summary>The lean of a segment, in degrees.</summary>
    public static ClipSamples Lean(ContactTrial trial, DigitisedClip clip, BodySegment segment)
        => Angle(trial, clip, [segment.Proximal, segment.Distal], (p, sd) =>
        {
            var angle = SegmentAngle.Of(p[0], p[1], sd);
            return (angle.Lean.Degrees, angle.StandardError?.Degrees);
        });

    /// <summary>Knee flexion, in degrees.</summary>
    public static ClipSamples Knee(ContactTrial trial, DigitisedClip clip, bool far)
        => Joint(trial, clip, far, [MarkerRole.Hip, MarkerRole.Knee, MarkerRole.Ankle], JointAngle.Knee);

    /// <summary>Hip flexion, in degrees.</summary>
    public static ClipSamples Hip(ContactTrial trial, DigitisedClip clip, bool far)
        => Joint(trial, clip, far, [MarkerRole.Shoulder, MarkerRole.Hip, MarkerRole.Knee], JointAngle.Hip);

    /// <summary>Where the centre of mass is along the run, in m.</summary>
    public static ClipSamples CentreForward(ContactTrial trial, DigitisedClip clip, CentreOfMass centre)
    {
        MarkerRole[] roles = [.. centre.Weights.Keys];
        double[] weights = [.. roles.Select(r => centre.Weights[r])];
        var spread = Math.Sqrt(weights.Sum(w => w * w));
        return Of(trial, clip, roles, (p, sd) => (p.Select((q, i) => weights[i] * q.XMetres).Sum(), sd?.Metres * spread));
    }

    /// <summary>
    /// Value and slope at a moment, from the samples no further than a reach from it and, when it is a limit, none at or after it. Null when there are too few, or when they end more than two frames short of it.
    /// </summary>
    /// <param name="at">The moment.</param>
    /// <param name="reach">Reach to either side, s.</param>
    /// <param name="frame">Interval of the frames, s.</param>
    /// <param name="degree">Of the curve.</param>
    /// <param name="limit">Samples from here on do not count; null for none.</param>
    public LocalValue? At(double at, double reach, double frame, int degree, double? limit = null)
    {
        var last = limit is null ? double.PositiveInfinity : limit.Value - (1e-9 * frame);
        for (var wide = reach; wide < 4 * reach; wide *= 1.25)
        {
            int[] near = [.. Enumerable.Range(0, seconds.Count).Where(i => Math.Abs(seconds[i] - at) <= wide + (frame / 1e6) && seconds[i] < last)];
            if (near.Length < Math.Max(Fewest, degree + 2)) continue;
            if (seconds[near[^1]] < at - (2.01 * frame) || seconds[near[0]] > at + (2.01 * frame)) return null;
            return LocalCurve.At([.. near.Select(i => seconds[i])], [.. near.Select(i => values[i])], at, degree, SampleSd);
        }
        return null;
    }

    /// <summary>The mean of the samples before a moment, while the player is still: no more than a reach before it. Its slope is 0. Null when there is none.</summary>
    public LocalValue? Before(double at, double reach, double frame)
    {
        int[] near = [.. Enumerable.Range(0, seconds.Count).Where(i => seconds[i] <= at + (frame / 2) && seconds[i] >= at - reach)];
        if (near.Length == 0) return null;
        double mean = near.Average(i => values[i]);
        double? sample = SampleSd is { } sd ? sd * sd : near.Length > 2 ? near.Sum(i => Math.Pow(values[i] - mean, 2)) / (near.Length - 1) : null;
        return new(mean, sample is { } v ? v / near.Length : double.NaN, 0, 0, near.Length);
    }

    private static ClipSamples Joint(ContactTrial trial, DigitisedClip clip, bool far, MarkerRole[] roles, Func<PlanePoint, PlanePoint, PlanePoint, Quantities.Length?, JointAngle> angle)
        => Angle(trial, clip, far ? [.. roles.Select(r => r.Far())] : roles, (p, sd) =>
        {
            var at = angle(p[0], p[1], p[2], sd);
            return (at.Value.Degrees, at.StandardError?.Degrees);
        });

    // Angles run on past a half turn.
    private static ClipSamples Angle(ContactTrial trial, DigitisedClip clip, MarkerRole[] roles, Func<PlanePoint[], Quantities.Length?, (double Degrees, double? Sd)> angle)
    {
        var before = double.NaN;
        return Of(trial, clip, roles, (points, sd) =>
        {
            var at = angle(points, sd);
            before = double.IsNaN(before) ? at.Degrees : before + Math.IEEERemainder(at.Degrees - before, 360);
            return (before, at.Sd);
        });
    }

    private static ClipSamples Of(ContactTrial trial, DigitisedClip clip, MarkerRole[] roles, Func<PlanePoint[], Quantities.Length?, (double Value, double? Sd)> figure)
    {
        var series = new ClipSamples();
        MarkerTrack[] tracks = [.. roles.Select(r => clip[r])];
        for (var i = 0; i < clip.Count; i++)
        {
            if (tracks.Any(t => t[i] is null || t.IsFilled(i))) continue;
            PlanePoint[] points = [.. tracks.Select(t => t[i]!.Value)];
            var delay = ExposedTogether(trial, clip, tracks, points, i);
            var (value, sd) = figure(points, clip.PointSd);
            series.seconds.Add(clip.Clock.Time(clip.FirstFrame + i).Seconds + delay);
            series.values.Add(value);
            series.variance = sd * sd + series.variance;
        }
        return series;
    }

    /// <summary>
    /// Rows are exposed one after another, so the upper end of a segment is seen earlier than the lower: a body that moves leans in the picture. Brings the points to one moment by their own speed; returns its delay after the
    /// beginning of the frame, s.
    /// </summary>
    private static double ExposedTogether(ContactTrial trial, DigitisedClip clip, MarkerTrack[] tracks, PlanePoint[] points, int i)
    {
        if (trial.Shutter is not { } shutter || clip.Rows is not { } rows) return 0;
        double[] delays = [.. points.Select(p => shutter.DelayAt(Math.Clamp(rows.RowAt(p.YMetres), 0, shutter.PictureHeightPixels)).Seconds)];
        var together = delays.Average();
        for (var k = 0; k < points.Length; k++)
        {
            var (speedX, speedY) = SpeedNear(clip, tracks[k], i);
            points[k] = new(points[k].XMetres + (speedX * (together - delays[k])), points[k].YMetres + (speedY * (together - delays[k])));
        }
        return together;
    }

    // By the points about 0.02 s to either side; a few ms are bridged with it, so it need not be exact.
    private static (double X, double Y) SpeedNear(DigitisedClip clip, MarkerTrack track, int i)
    {
        var wide = Math.Max(1, (int)Math.Round(0.02 / clip.Clock.Interval.Seconds));
        int before = i, after = i;
        while (before > 0 && i - before < wide && track[before - 1] is not null) before--;
        while (after + 1 < clip.Count && after - i < wide && track[after + 1] is not null) after++;
        if (before == after) return (0, 0);
        var seconds = (clip.Clock.Time(clip.FirstFrame + after) - clip.Clock.Time(clip.FirstFrame + before)).Seconds;
        return ((track[after]!.Value.XMetres - track[before]!.Value.XMetres) / seconds, (track[after]!.Value.YMetres - track[before]!.Value.YMetres) / seconds);
    }
}
