namespace Analytics.Metrics.Motion;

/// <summary>How a gap is bridged.</summary>
public enum GapCurve
{
    /// <summary>A straight line between the points at both ends.</summary>
    Linear,

    /// <summary>A cubic through two points on each side; a straight line where a side has only one.</summary>
    Cubic,
}

/// <summary>
/// Fills short gaps inside a track and marks what it filled. Longer gaps and missing ends stay: the track falls into pieces, and speeds, angles and filters stay inside them. A filled point
/// is a guess with more error than a digitised one, not stated here: keep gaps out of the events that matter.
/// </summary>
/// <param name="Longest">Longest gap filled, in samples, 0 or more.</param>
/// <param name="Curve">How.</param>
public sealed record GapFill(int Longest, GapCurve Curve = GapCurve.Cubic)
{
    /// <summary>The clip with its short gaps filled.</summary>
    public DigitisedClip Apply(DigitisedClip clip)
    {
        ArgumentNullException.ThrowIfNull(clip);
        return clip.With(clip.Tracks.Select(Apply));
    }

    /// <summary>The track with its short gaps filled and marked.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A longest gap below 0.</exception>
    public MarkerTrack Apply(MarkerTrack track)
    {
        ArgumentNullException.ThrowIfNull(track);
        ArgumentOutOfRangeException.ThrowIfNegative(Longest);
        var (x, y, filled) = (track.X.ToArray(), track.Y.ToArray(), track.Filled.ToArray());
        for (var p = 0; p + 1 < track.Pieces.Count; p++)
        {
            var (from, to) = (track.Pieces[p].End, track.Pieces[p + 1].Start);
            if (to - from > Longest) continue;
            var cubic = Curve == GapCurve.Cubic && track.Pieces[p].Length > 1 && track.Pieces[p + 1].Length > 1;
            for (var i = from; i < to; i++)
            {
                // The points stand on whole samples: weights of Lagrange's polynomial, the same for both coordinates.
                ReadOnlySpan<int> at = cubic ? [from - 2, from - 1, to, to + 1] : [from - 1, to];
                (x[i], y[i], filled[i]) = (Between(track.X, at, i), Between(track.Y, at, i), true);
            }
        }
        return new(track.Name, track.Role, x, y, filled) { Smoothing = track.Smoothing };
    }

    private static double Between(ReadOnlySpan<double> values, ReadOnlySpan<int> at, int i)
    {
        var sum = 0.0;
        foreach (var j in at)
        {
            var weight = 1.0;
            foreach (var k in at)
                if (k != j) weight *= (double)(i - k) / (j - k);
            sum += weight * values[j];
        }
        return sum;
    }
}
