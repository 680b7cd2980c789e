using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// How much of the digitising error is left: the SD of a filtered point, its central-difference speed and acceleration for error of SD 1 that is independent from frame to frame.
/// Exact away from the ends: the mean of |filter|²·|difference|² over all frequencies. Unfiltered: 1, 1/(√2·Δt) and √6/Δt². Errors that last over frames (a marker always put too high) are not reduced by filtering.
/// </summary>
public static class NoiseGain
{
    /// <summary>SD of the filtered coordinate over the SD of a digitised one.</summary>
    /// <param name="filter">The filter; null for none.</param>
    /// <param name="rate">Frame rate.</param>
    public static double OfPosition(LowPass? filter, Frequency rate) => filter is null ? 1 : Gain(filter, rate, 0);

    /// <summary>SD of the speed (m/s) for each metre of SD of a coordinate.</summary>
    /// <param name="filter">The filter; null for none.</param>
    /// <param name="rate">Frame rate.</param>
    public static double OfVelocity(LowPass? filter, Frequency rate) => rate.Hertz * (filter is null ? Math.Sqrt(0.5) : Gain(filter, rate, 1));

    /// <summary>SD of the acceleration (m/s²) for each metre of SD of a coordinate.</summary>
    /// <param name="filter">The filter; null for none.</param>
    /// <param name="rate">Frame rate.</param>
    public static double OfAcceleration(LowPass? filter, Frequency rate) => rate.Hertz * rate.Hertz * (filter is null ? Math.Sqrt(6) : Gain(filter, rate, 2));

    private static double Gain(LowPass filter, Frequency rate, int order)
    {
        var warped = filter.Coefficients(rate).WarpedCutoff;
        // The mean over evenly spaced frequencies converges like exp(-2.8·n·ωc): n = 16/ωc gives all digits.
        var frequencies = (int)Math.Clamp(Math.Ceiling(16 / warped), 64, 100_000);
        var sum = 0.0;
        for (var k = 0; k < frequencies; k++)
        {
            var w = Math.PI * (k + 0.5) / frequencies;
            var difference = order switch { 0 => 1, 1 => Math.Sin(w) * Math.Sin(w), _ => 4 * (1 - Math.Cos(w)) * (1 - Math.Cos(w)) };
            var power = PowerOfOnePass(filter.Shape, Math.Tan(w / 2) / warped);
            sum += difference * (filter.DualPass ? power * power : power);
        }
        return Math.Sqrt(sum / frequencies);
    }

    private static double PowerOfOnePass(FilterShape shape, double ratio)
    {
        var square = ratio * ratio;
        return shape == FilterShape.Butterworth ? 1 / (1 + (square * square)) : 1 / ((1 + square) * (1 + square));
    }
}
