using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// A low-pass filter for digitised points: as made, a second-order Butterworth run forward and backward (no time shift), its cut-off corrected for two passes, ends padded by odd
/// reflection. It needs an even frame rate and no gaps. Other settings are for comparison with print. See-also <see cref="ResidualAnalysis"/> for choosing the cut-off. Source: [winter2009].
/// </summary>
public sealed record LowPass
{
    /// <summary>A dual-pass Butterworth filter, corrected and padded.</summary>
    /// <param name="cutoff">Where the filter as a whole is 3 dB down, above 0.</param>
    public LowPass(Frequency cutoff) => Cutoff = Require.Positive(cutoff, "cut-off");

    /// <summary>Where the filter as a whole (corrected) is 3 dB down.</summary>
    public Frequency Cutoff { get; }

    /// <summary>Kind of filter.</summary>
    public FilterShape Shape { get; init; } = FilterShape.Butterworth;

    /// <summary>Forward and backward; a single forward pass delays.</summary>
    public bool DualPass { get; init; } = true;

    /// <summary>Whether the cut-off is corrected for the second pass.</summary>
    public bool Corrected { get; init; } = true;

    /// <summary>What stands at the ends.</summary>
    public EndPadding Padding { get; init; } = EndPadding.OddNine;

    /// <summary>Fewest samples that can be filtered.</summary>
    public int FewestSamples => Padding == EndPadding.OddNine ? FilterPass.Padding + 1 : 1;

    /// <summary>The coefficients at a frame rate.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A cut-off at half the frame rate or above.</exception>
    public FilterCoefficients Coefficients(Frequency rate) => FilterCoefficients.For(Shape, Cutoff, rate, Corrected && DualPass ? 2 : 1);

    /// <summary>Filters one series; allocates nothing. For many series take <see cref="Coefficients"/> once and the other overload.</summary>
    /// <param name="x">Samples at an even rate, finite, at least <see cref="FewestSamples"/>.</param>
    /// <param name="rate">Frame rate.</param>
    /// <param name="filtered">As long as x; may be x itself, except that a bad sample then leaves it spoilt.</param>
    /// <exception cref="ArgumentException">Unequal lengths, too few samples, or one that is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A cut-off at half the frame rate or above.</exception>
    public void Apply(ReadOnlySpan<double> x, Frequency rate, Span<double> filtered) => Apply(x, Coefficients(rate), filtered);

    /// <summary>Filters one series with coefficients made before; allocates nothing.</summary>
    /// <param name="x">Samples at an even rate, finite, at least <see cref="FewestSamples"/>.</param>
    /// <param name="coefficients">From <see cref="Coefficients"/>.</param>
    /// <param name="filtered">As long as x.</param>
    /// <exception cref="ArgumentException">Unequal lengths, too few samples, or one that is not finite.</exception>
    public void Apply(ReadOnlySpan<double> x, in FilterCoefficients coefficients, Span<double> filtered)
    {
        if (x.Length != filtered.Length) throw new ArgumentException($"{x.Length} samples cannot be filtered into {filtered.Length}; give a span of the same length.", nameof(filtered));
        if (x.Length < FewestSamples)
            throw new ArgumentException($"{x.Length} samples are too few for this filter, which needs {FewestSamples} (9 reflected at each end). Digitise more frames around the event.", nameof(x));
        FilterPass.Run(coefficients, x, filtered, DualPass ? 2 : 1, Padding == EndPadding.OddNine);
        // A sample that is not finite spoils everything after it, and backward everything before.
        if (!double.IsFinite(filtered[0]) || !double.IsFinite(filtered[^1])) throw NotFinite(x);
    }

    /// <summary>Filters both coordinates of a marker side by side; checks and errors as for one.</summary>
    internal void Apply(ReadOnlySpan<double> x, ReadOnlySpan<double> y, in FilterCoefficients coefficients, Span<double> xFiltered, Span<double> yFiltered)
    {
        FilterPass.Run(coefficients, x, y, xFiltered, yFiltered, DualPass ? 2 : 1, Padding == EndPadding.OddNine);
        if (!double.IsFinite(xFiltered[0]) || !double.IsFinite(xFiltered[^1])) throw NotFinite(x);
        if (!double.IsFinite(yFiltered[0]) || !double.IsFinite(yFiltered[^1])) throw NotFinite(y);
    }

    /// <summary>The filter in words.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"{(Shape == FilterShape.Butterworth ? "Butterworth" : "critically damped")} low-pass {Cutoff.Hertz:0.##} Hz, second order, {(DualPass ? "forward and backward" : "forward only")}{(Corrected && DualPass ? ", cut-off corrected" : "")}{(Padding == EndPadding.None ? ", ends not padded" : "")}");

    private static ArgumentException NotFinite(ReadOnlySpan<double> x)
    {
        for (var i = 0; i < x.Length; i++)
            if (!double.IsFinite(x[i]))
                return new(string.Create(CultureInfo.InvariantCulture, $"Sample {i} is {x[i]}; a filter needs finite samples. Fill short gaps first and filter the pieces between long ones."), nameof(x));
        return new("The samples are too large to filter; check their unit.", nameof(x));
    }
}
