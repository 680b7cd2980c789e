using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// Puts a clip with time stamps on an even grid of its typical interval: dropped frames become gaps (for <see cref="GapFill"/>), and points between stamps are taken from a
/// cubic through the four nearest (fewer at the ends of a piece). A clip that is even already comes back as it is.
/// </summary>
public static class EvenGrid
{
    /// <summary>A clip with the same points at even times; frame numbers stay those of the first frame and count on evenly.</summary>
    public static DigitisedClip Of(DigitisedClip clip)
    {
        ArgumentNullException.ThrowIfNull(clip);
        if (!clip.Clock.IsVariable) return clip;
        var times = new double[clip.Count];
        for (var i = 0; i < times.Length; i++) times[i] = clip.Clock.Seconds(clip.FirstFrame + i);
        var step = clip.Clock.IntervalSeconds;
        var count = (int)Math.Round((times[^1] - times[0]) / step) + 1;
        // Stamps and clock agree about the time of the first frame.
        double[] even = [.. Enumerable.Range(0, count).Select(i => times[0] + (i * step))];
        if (count < 3) throw new ArgumentException($"The clip has {clip.Count} frames; an even grid needs at least 3.", nameof(clip));
        return new(FrameClock.FromTimeStamps(even, clip.FirstFrame), clip.Tracks.Select(t => OnGrid(t, times, even, step)), clip.FirstFrame, clip.PointSd, clip.ScaleRelativeSd) { Rows = clip.Rows };
    }

    internal static void Require(DigitisedClip clip)
    {
        if (clip.Clock.IsVariable)
            throw new ArgumentException($"The frame rate is not even ({clip.Clock}); put the clip on an even grid first with {nameof(EvenGrid)}.", nameof(clip));
    }

    private static MarkerTrack OnGrid(MarkerTrack track, double[] times, double[] even, double step)
    {
        double[] x = new double[even.Length], y = new double[even.Length];
        var filled = new bool[even.Length];
        Array.Fill(x, double.NaN);
        Array.Fill(y, double.NaN);
        foreach (var run in Runs(track, times, step))
            for (var i = 0; i < even.Length; i++)
            {
                if (even[i] < times[run.Start] - (FrameClock.EvenWithin * step) || even[i] > times[run.End - 1] + (FrameClock.EvenWithin * step)) continue;
                var near = FourAround(run, times, even[i]);
                (x[i], y[i]) = (Lagrange(track.X, times, near, even[i]), Lagrange(track.Y, times, near, even[i]));
                for (var k = near.Start; k < near.End; k++) filled[i] |= track.IsFilled(k);
            }
        return new(track.Name, track.Role, x, y, filled) { Smoothing = track.Smoothing };
    }

    // Stretches without a gap of points or a hole of time.
    private static IEnumerable<TrackPiece> Runs(MarkerTrack track, double[] times, double step)
    {
        foreach (var piece in track.Pieces)
        {
            var start = piece.Start;
            for (var i = piece.Start + 1; i <= piece.End; i++)
            {
                if (i < piece.End && times[i] - times[i - 1] <= 1.5 * step) continue;
                yield return new(start, i - start);
                start = i;
            }
        }
    }

    private static TrackPiece FourAround(TrackPiece run, double[] times, double time)
    {
        var after = Array.BinarySearch(times, run.Start, run.Length, time);
        after = after >= 0 ? after : ~after;
        var count = Math.Min(4, run.Length);
        return new(Math.Clamp(after - 2, run.Start, run.End - count), count);
    }

    private static double Lagrange(ReadOnlySpan<double> values, double[] times, TrackPiece near, double time)
    {
        var sum = 0.0;
        for (var j = near.Start; j < near.End; j++)
        {
            var weight = 1.0;
            for (var k = near.Start; k < near.End; k++)
                if (k != j) weight *= (time - times[k]) / (times[j] - times[k]);
            sum += weight * values[j];
        }
        return sum;
    }
}
