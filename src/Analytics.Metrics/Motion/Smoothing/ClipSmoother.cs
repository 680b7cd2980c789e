using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// Filters every marker of a clip, piece by piece, with one cut-off for all or one for each marker by residual analysis. Pieces too short for the filter become gaps, and a note says so.
/// </summary>
public static class ClipSmoother
{
    /// <summary>One filter for all markers.</summary>
    /// <exception cref="ArgumentException">An uneven frame rate, or a clip that was filtered before.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A cut-off at half the frame rate or above.</exception>
    public static SmoothedClip Smooth(DigitisedClip clip, LowPass filter)
    {
        Check(clip);
        ArgumentNullException.ThrowIfNull(filter);
        var notes = new List<string>();
        return new(clip.With([.. clip.Tracks.Select(t => Smooth(t, filter, clip, notes))]), notes);
    }

    /// <summary>
    /// A corrected dual-pass Butterworth filter for each marker, its cut-off chosen by residual analysis of its longest piece: the higher of x and y, so that neither loses movement.
    /// A coordinate without a clear result does not count; a marker without any takes the fallback, and a note says why.
    /// </summary>
    /// <param name="clip">A clip with an even rate.</param>
    /// <param name="fallback">Cut-off where the analysis gives none; trunk and limbs of a sprint are usually filtered at 8 to 15 Hz (from memory).</param>
    /// <param name="settings">Cut-offs to try; <see cref="ResidualSettings.Sprint"/> when left out.</param>
    /// <exception cref="ArgumentException">An uneven frame rate, or a clip that was filtered before.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A fallback at half the frame rate or above.</exception>
    public static SmoothedClip SmoothByResiduals(DigitisedClip clip, Frequency fallback, ResidualSettings? settings = null)
    {
        Check(clip);
        _ = new LowPass(fallback).Coefficients(clip.Clock.Rate);
        var (analysis, notes) = (new ResidualAnalysis(clip.Clock.Rate, settings ?? ResidualSettings.Sprint), new List<string>());
        return new(clip.With([.. clip.Tracks.Select(t => Smooth(t, new(Choose(t, analysis, fallback, notes)), clip, notes))]), notes);
    }

    private static Frequency Choose(MarkerTrack track, ResidualAnalysis analysis, Frequency fallback, List<string> notes)
    {
        var (x, y) = analysis.Of(track);
        if (x.Cutoff is null && y.Cutoff is null)
        {
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"{track.Role.InWords()}: filtered at {fallback.Hertz:0.#} Hz, no cut-off by residuals (x: {x.Explanation}; y: {y.Explanation})"));
            return fallback;
        }
        return Frequency.FromHertz(Math.Max(x.Cutoff?.Hertz ?? 0, y.Cutoff?.Hertz ?? 0));
    }

    private static MarkerTrack Smooth(MarkerTrack track, LowPass filter, DigitisedClip clip, List<string> notes)
    {
        var coefficients = filter.Coefficients(clip.Clock.Rate);
        double[] x = new double[track.Count], y = new double[track.Count];
        var whole = track.Pieces is [{ } all] && all.Length == track.Count;
        if (!whole)
        {
            Array.Fill(x, double.NaN);
            Array.Fill(y, double.NaN);
        }
        List<TrackPiece> kept = [];
        foreach (var piece in track.Pieces)
        {
            if (piece.Length < filter.FewestSamples)
            {
                notes.Add($"{track.Role.InWords()}: {piece.Length} frames from frame {clip.FirstFrame + piece.Start} left out, the filter needs {filter.FewestSamples} without a gap");
                Array.Fill(x, double.NaN, piece.Start, piece.Length);
                Array.Fill(y, double.NaN, piece.Start, piece.Length);
                continue;
            }
            kept.Add(piece);
            filter.Apply(track.X.Slice(piece.Start, piece.Length), track.Y.Slice(piece.Start, piece.Length), coefficients, x.AsSpan(piece.Start, piece.Length), y.AsSpan(piece.Start, piece.Length));
        }
        return new(track, x, y, kept, filter);
    }

    private static void Check(DigitisedClip clip)
    {
        ArgumentNullException.ThrowIfNull(clip);
        EvenGrid.Require(clip);
        if (clip.Tracks.FirstOrDefault(t => t.Smoothing is not null) is { } smooth)
            throw new ArgumentException($"Marker '{smooth.Name}' was filtered already ({smooth.Smoothing}); filter the points as digitised.", nameof(clip));
    }
}
