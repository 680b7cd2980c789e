using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Benchmarks.ClipKinematics;

/// <summary>What is done with each clip, and sums of the results: nothing can be optimised away, and both sides can be compared.</summary>
internal sealed class ClipWork
{
    private readonly ResidualAnalysis residuals = new(Frequency.FromHertz(MadeUpClips.Rate), ResidualSettings.Sprint);
    private readonly LowPass filter = new(Frequency.FromHertz(10));
    private double cutoffs, speeds, accelerations, leans;
    private long clips, series, rates, angles;

    /// <summary>Mean cut-off (Hz), size of velocity (m/s) and acceleration (m/s²), lean (°).</summary>
    public double[] Means => [cutoffs / series, speeds / rates, accelerations / rates, leans / angles];

    public long Clips => clips;

    public void Do(DigitisedClip clip)
    {
        foreach (var track in clip.Tracks)
        {
            var (x, y) = residuals.Of(track);
            Residuals(x);
            Residuals(y);
        }
        var smooth = ClipSmoother.Smooth(clip, filter).Clip;
        foreach (var track in smooth.Tracks)
        {
            var motion = MarkerMotion.Of(smooth, track.Role);
            var (vx, vy, ax, ay) = (motion.VelocityX, motion.VelocityY, motion.AccelerationX, motion.AccelerationY);
            for (var i = 1; i < clip.Count - 1; i++)
            {
                speeds += Math.Abs(vx[i]!.Value) + Math.Abs(vy[i]!.Value);
                accelerations += Math.Abs(ax[i]!.Value) + Math.Abs(ay[i]!.Value);
            }
            rates += 2 * (clip.Count - 2);
        }
        Lean(AngleSeries.Lean(smooth, BodySegment.Shank));
        Lean(AngleSeries.Lean(smooth, BodySegment.Trunk));
        clips++;
    }

    private void Residuals(ResidualAnalysisResult result)
    {
        cutoffs += result.Cutoff?.Hertz ?? throw new InvalidOperationException(result.Explanation);
        series++;
    }

    private void Lean(AngleSeries series)
    {
        var degrees = series.Degrees;
        for (var i = 0; i < degrees.Count; i++) leans += degrees[i]!.Value;
        angles += MadeUpClips.Frames;
    }
}
