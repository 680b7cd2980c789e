using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// Coefficients of y[i] = a0·x[i] + a1·x[i−1] + a2·x[i−2] + b1·y[i−1] + b2·y[i−2], a second-order low-pass filter. ωc = tan(π·fc/fs)/C, where C moves the cut-off so that n passes
/// together are 3 dB down at fc: C = (2^(1/n) − 1)^(1/4), critically damped (2^(1/2n) − 1)^(1/2). The correction acts on the warped frequency ωc; dividing fc itself
/// gives another filter (20 Hz at 120 Hz: 0.764 for 0.720). K1 = √2·ωc (2·ωc critically damped), K2 = ωc², a0 = K2/(1 + K1 + K2). Source: [winter2009].
/// </summary>
public readonly record struct FilterCoefficients
{
    private FilterCoefficients(double correction, double warped, double a0, double b1, double b2)
        => (Correction, WarpedCutoff, A0, B1, B2) = (correction, warped, a0, b1, b2);

    /// <summary>C; 1 when uncorrected.</summary>
    public double Correction { get; }

    /// <summary>ωc, no unit.</summary>
    public double WarpedCutoff { get; }

    /// <summary>Weight of the present sample.</summary>
    public double A0 { get; }

    /// <summary>Weight of the sample before: 2·a0.</summary>
    public double A1 => 2 * A0;

    /// <summary>Weight of the one before that: a0.</summary>
    public double A2 => A0;

    /// <summary>Weight of the output before.</summary>
    public double B1 { get; }

    /// <summary>Weight of the output before that.</summary>
    public double B2 { get; }

    /// <summary>Coefficients for a cut-off and a sampling rate.</summary>
    /// <param name="shape">Kind of filter.</param>
    /// <param name="cutoff">fc, above 0 and below half the sampling rate.</param>
    /// <param name="rate">fs.</param>
    /// <param name="passesCorrectedFor">n: 1 for no correction, 2 for a forward and a backward pass.</param>
    /// <exception cref="ArgumentOutOfRangeException">A cut-off or number of passes outside that range.</exception>
    public static FilterCoefficients For(FilterShape shape, Frequency cutoff, Frequency rate, int passesCorrectedFor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(passesCorrectedFor, 1);
        if (!(cutoff.Hertz > 0 && cutoff.Hertz < rate.Hertz / 2))
            throw new ArgumentOutOfRangeException(nameof(cutoff), cutoff, string.Create(CultureInfo.InvariantCulture,
                $"the cut-off must be above 0 Hz and below half the frame rate, {rate.Hertz / 2:0.###} Hz; got {cutoff}. Lower the cut-off or film at a higher rate."));

        var critical = shape == FilterShape.CriticallyDamped;
        // The correction for one critically damped pass is not 1: such a pass is 6 dB down at its own corner. Uncorrected means 1 all the same.
        var c = passesCorrectedFor == 1 ? 1
            : critical ? Math.Sqrt(Math.Pow(2, 0.5 / passesCorrectedFor) - 1)
            : Math.Sqrt(Math.Sqrt(Math.Pow(2, 1.0 / passesCorrectedFor) - 1));
        var warped = Math.Tan(Math.PI * (cutoff / rate)) / c;
        var (k1, k2) = ((critical ? 2 : Math.Sqrt(2)) * warped, warped * warped);
        var a0 = k2 / (1 + k1 + k2);
        var k3 = 2 / (1 + k1 + k2);
        return new(c, warped, a0, k3 - (2 * a0), 1 - (2 * a0) - k3);
    }
}
