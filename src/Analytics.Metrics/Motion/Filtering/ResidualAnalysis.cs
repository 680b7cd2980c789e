using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// Choosing a cut-off by residuals: R(fc) = √(Σ(x − x filtered)²/N) for a list of cut-offs; where only noise is left R falls along a straight line, whose value at 0 Hz estimates
/// the noise; the cut-off is where R comes down to it (straight line between the cut-offs tried): there as much signal is lost as noise is let through. Source: [winter2009].
/// It judges one coordinate of one clip; it is not exact to better than about 1 Hz and depends on where the tail is taken.
/// </summary>
public sealed class ResidualAnalysis
{
    /// <summary>A tail with less of its variance on a line is not called straight; our choice: tails of noise lie above 0.98, of movement left in them below 0.965.</summary>
    private const double StraightFrom = 0.97;

    /// <summary>The lowest cut-off must leave this many times the noise, or no movement is seen to be lost there; noise alone leaves 0.9 to 1.1. Our choice.</summary>
    private const double MovementFrom = 1.25;

    private readonly ResidualSweep? sweep;
    private readonly Frequency rate;

    /// <summary>Prepares an analysis for clips of one frame rate; it may be used for many series and from several threads.</summary>
    /// <param name="rate">Frame rate.</param>
    /// <param name="settings">Cut-offs to try; <see cref="ResidualSettings.Slow"/> when left out.</param>
    public ResidualAnalysis(Frequency rate, ResidualSettings? settings = null)
    {
        (this.rate, Settings) = (Require.Positive(rate, "frame rate"), settings ?? ResidualSettings.Slow);
        if (Settings.Cutoffs[^1].Hertz >= rate.Hertz / 2) return;
        sweep = new([.. Settings.Cutoffs.Select(c => new LowPass(c).Coefficients(rate))]);
    }

    /// <summary>What is tried.</summary>
    public ResidualSettings Settings { get; }

    /// <summary>Analyses one coordinate.</summary>
    /// <param name="x">Samples at the frame rate, finite, without gaps.</param>
    /// <exception cref="ArgumentException">A sample that is not finite.</exception>
    public ResidualAnalysisResult Of(ReadOnlySpan<double> x)
    {
        for (var i = 0; i < x.Length; i++)
            if (!double.IsFinite(x[i]))
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Sample {i} is {x[i]}; residual analysis needs finite samples without gaps."), nameof(x));
        if (Prevented(x.Length) is { } none) return none;
        var residuals = new double[Settings.Cutoffs.Count];
        sweep!.Run(x, residuals);
        return Judge(residuals);
    }

    /// <summary>Analyses both coordinates of a marker, in m, over its longest piece without a gap.</summary>
    /// <param name="track">A marker as digitised, at the frame rate.</param>
    public (ResidualAnalysisResult X, ResidualAnalysisResult Y) Of(MarkerTrack track)
    {
        ArgumentNullException.ThrowIfNull(track);
        var longest = track.Pieces.OrderByDescending(p => p.Length).FirstOrDefault();
        ReadOnlySpan<double> x = track.X.Slice(longest.Start, longest.Length), y = track.Y.Slice(longest.Start, longest.Length);
        // The samples of a piece are finite.
        if (Prevented(x.Length) is { } none) return (none, none);
        double[] ofX = new double[Settings.Cutoffs.Count], ofY = new double[Settings.Cutoffs.Count];
        sweep!.Run(x, ofX, y, ofY);
        return (Judge(ofX), Judge(ofY));
    }

    /// <summary>Why so few samples, or any at this rate, cannot be analysed; null when they can.</summary>
    private ResidualAnalysisResult? Prevented(int samples)
    {
        if (sweep is null)
            return Ended(ResidualState.RateTooLow, $"cut-offs up to {Settings.Cutoffs[^1].Hertz:0.##} Hz need more than {2 * Settings.Cutoffs[^1].Hertz:0.##} frames a second; the clip has {rate.Hertz:0.##}");
        return samples > FilterPass.Padding ? null
            : Ended(ResidualState.TooFewSamples, $"{samples} samples; residual analysis needs at least {FilterPass.Padding + 1}");
    }

    private ResidualAnalysisResult Judge(double[] residuals)
    {
        var (slope, level, rSquared) = TailLine(residuals);
        ResidualAnalysisResult Ends(ResidualState state, FormattableString words, Frequency? cutoff = null)
            => Ended(state, words) with { Cutoff = cutoff, Residuals = residuals, TailSlope = slope, NoiseLevel = level, TailRSquared = rSquared };
        if (!(rSquared >= StraightFrom && slope < 0))
            return Ends(ResidualState.NoStraightTail, $"no straight tail from {Settings.TailFrom.Hertz:0.##} Hz: only {100 * rSquared:0} % of it lies on a falling line");

        for (var i = 0; i + 1 < residuals.Length && residuals[0] >= MovementFrom * level; i++)
        {
            if (!(residuals[i] >= level && residuals[i + 1] < level)) continue;
            double from = Settings.Cutoffs[i].Hertz, to = Settings.Cutoffs[i + 1].Hertz;
            var cutoff = from + ((to - from) * (residuals[i] - level) / (residuals[i] - residuals[i + 1]));
            return Ends(ResidualState.Chosen, $"residuals reach the noise level at {cutoff:0.0} Hz", Frequency.FromHertz(cutoff));
        }
        return Ends(ResidualState.NoCrossing, $"even at {Settings.Cutoffs[0].Hertz:0.##} Hz the residual hardly exceeds the noise level: the point moves too little to choose a cut-off by");
    }

    private (double Slope, double Level, double RSquared) TailLine(double[] residuals)
    {
        var from = Settings.TailStart;
        var n = residuals.Length - from;
        double meanX = 0, meanY = 0, xx = 0, xy = 0, yy = 0;
        for (var i = from; i < residuals.Length; i++) (meanX, meanY) = (meanX + (Settings.Cutoffs[i].Hertz / n), meanY + (residuals[i] / n));
        for (var i = from; i < residuals.Length; i++)
        {
            double dx = Settings.Cutoffs[i].Hertz - meanX, dy = residuals[i] - meanY;
            (xx, xy, yy) = (xx + (dx * dx), xy + (dx * dy), yy + (dy * dy));
        }
        var slope = xy / xx;
        // Residuals that do not change at all have no line to lie on.
        return (slope, meanY - (slope * meanX), yy > 0 ? xy * xy / (xx * yy) : 0);
    }

    private ResidualAnalysisResult Ended(ResidualState state, FormattableString words)
        => new() { State = state, Settings = Settings, Explanation = words.ToString(CultureInfo.InvariantCulture) };
}
