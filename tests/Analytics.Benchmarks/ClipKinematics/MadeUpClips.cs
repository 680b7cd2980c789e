using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Benchmarks.ClipKinematics;

/// <summary>Made-up clips, the same as in clip_kinematics_speed.py: a run at 8 m/s, limbs swinging at 2.1 Hz and twice that, 5 mm of even noise by index.</summary>
internal static class MadeUpClips
{
    public const int Frames = 300;
    public const double Rate = 240;

    public static readonly MarkerRole[] Roles =
        [MarkerRole.HeadVertex, MarkerRole.Shoulder, MarkerRole.Hip, MarkerRole.Knee, MarkerRole.Ankle, MarkerRole.Heel, MarkerRole.Toe, MarkerRole.Wrist];

    private static readonly FrameClock Clock = FrameClock.FromRate(Frequency.FromHertz(Rate));

    public static DigitisedClip Make(int clip) => new(Clock, Roles.Select((role, m) => Track(clip, m, role)));

    private static MarkerTrack Track(int clip, int m, MarkerRole role)
    {
        double[] x = new double[Frames], y = new double[Frames];
        var phase = (0.7 * m) + (0.3 * clip);
        for (var i = 0; i < Frames; i++)
        {
            var t = i / Rate;
            var k = (((clip * Roles.Length) + m) * 2 * Frames) + i;
            var swing = (0.05 * (m + 1) * Math.Sin((2 * Math.PI * 2.1 * t) + phase)) + (0.01 * (m + 1) * Math.Sin(2 * Math.PI * 4.2 * t));
            x[i] = (8 * t) + (0.1 * m) + swing + (0.0173 * Noise(k));
            y[i] = 1.8 - (0.2 * m) + (0.5 * swing) + (0.0173 * Noise(k + Frames));
        }
        return new(role.InWords(), role, x, y);
    }

    private static double Noise(int k)
    {
        var h = unchecked((uint)k * 2654435761u);
        h ^= h >> 16;
        h = unchecked(h * 2246822519u);
        h ^= h >> 13;
        return (h / 4294967296.0) - 0.5;
    }
}
