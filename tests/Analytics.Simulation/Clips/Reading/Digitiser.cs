using Analytics.Metrics.Motion;
using Analytics.Simulation.Clips.Camera;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Clips.Reading;

/// <summary>Somebody who clicks on markers frame by frame: normal error of one size, independent from frame to frame, maybe whole pixels, markers hidden for a while.</summary>
/// <param name="SdPixels">SD of one coordinate of one click.</param>
/// <param name="WholePixels">Clicks fall on whole pixels; otherwise on tenths.</param>
/// <param name="HiddenChance">Chance of a marker to be hidden for a spell of <paramref name="HiddenFrames"/> frames somewhere before contact.</param>
/// <param name="HiddenFrames">Length of such a spell.</param>
public sealed record Digitiser(double SdPixels, bool WholePixels = true, double HiddenChance = 0, int HiddenFrames = 4)
{
    /// <summary>Frames in which the ends of the stick are clicked.</summary>
    public const int StickFrames = 3;

    /// <summary>The clicks, by marker and frame; NaN where there is none.</summary>
    public IReadOnlyList<PixelTrack> Read(Recording clip, IReadOnlyList<MarkerRole> roles, RandomNumbers random)
    {
        var tracks = new List<PixelTrack>();
        var frames = clip.FrameSeconds.Length;
        foreach (var (role, path) in clip.Picture([.. roles.Where(r => r.IsBody())]))
        {
            double[] x = new double[frames], y = new double[frames];
            for (var i = 0; i < frames; i++) (x[i], y[i]) = (Click(path[i].X, random), Click(path[i].Y, random));
            if (random.Chance(HiddenChance)) Hide(x, y, clip, random);
            tracks.Add(new(MarkerNames.Of(role), role, x, y));
        }
        foreach (var role in roles.Where(r => !r.IsBody()))
        {
            double[] x = new double[frames], y = new double[frames];
            Array.Fill(x, double.NaN);
            Array.Fill(y, double.NaN);
            var (atX, atY) = clip.Stick(role);
            for (var i = 0; i < StickFrames; i++) (x[i], y[i]) = (Click(atX, random), Click(atY, random));
            tracks.Add(new(MarkerNames.Of(role), role, x, y));
        }
        return tracks;
    }

    private double Click(double at, RandomNumbers random)
    {
        var clicked = at + (SdPixels * random.Normal());
        return WholePixels ? Math.Round(clicked) : Math.Round(10 * clicked) / 10;
    }

    private void Hide(double[] x, double[] y, Recording clip, RandomNumbers random)
    {
        // Well before contact, so that the gap is no part of what is read there.
        var last = Array.FindLastIndex(clip.FrameSeconds, t => t < clip.Run.ContactSeconds - 0.1) - HiddenFrames;
        if (last < 5) return;
        var start = 4 + random.Below(last - 4);
        for (var i = start; i < start + HiddenFrames; i++) (x[i], y[i]) = (double.NaN, double.NaN);
    }
}
