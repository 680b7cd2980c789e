namespace Analytics.Statistics.Monitoring;

/// <summary>Which constant turns a moving range into a standard deviation.</summary>
public enum MovingRangeConstants
{
    /// <summary>2/√π and what follows from it, in full. The default.</summary>
    Exact,

    /// <summary>The rounded divisor in print, 1.128, and the rounded factor of the range limit, 3.267.</summary>
    Printed,
}

/// <summary>How the moving ranges are put together.</summary>
public enum MovingRangeCentre
{
    /// <summary>Their mean over d₂. The default.</summary>
    Mean,

    /// <summary>Their median over √2 Φ⁻¹(3/4): one jump in the baseline does not widen the limits.</summary>
    Median,
}

/// <summary>Constants of the range of two values of a normal law, and the SD that moving ranges give [wheelerchambers1992].</summary>
public static class MovingRange
{
    /// <summary>Mean of the range of two standard normal values, d₂ = 2/√π.</summary>
    public const double D2 = 1.1283791670955126;

    /// <summary>Its standard deviation, d₃ = √(2 − 4/π).</summary>
    public const double D3 = 0.85250246642742171;

    /// <summary>Upper 3 SD limit of the range over its mean, D₄ = 1 + 3 d₃/d₂.</summary>
    public const double D4 = 1 + 3 * D3 / D2;

    /// <summary>Median of the range of two standard normal values, √2 Φ⁻¹(3/4).</summary>
    public const double Median = 0.95387255240893976;

    /// <summary>Absolute steps from each value to the next.</summary>
    /// <param name="values">At least two finite values in the order of time.</param>
    public static IReadOnlyList<double> Of(IReadOnlyList<double> values)
    {
        Require.Sample(values, 2, nameof(values));
        return [.. values.Skip(1).Zip(values, (next, last) => Math.Abs(next - last))];
    }

    /// <summary>Standard deviation from the moving ranges, unit of the values.</summary>
    /// <param name="values">At least two finite values in the order of time.</param>
    /// <param name="centre">Mean or median of the ranges.</param>
    /// <param name="constants">Exact or printed divisor.</param>
    public static double StandardDeviation(
        IReadOnlyList<double> values, MovingRangeCentre centre = MovingRangeCentre.Mean, MovingRangeConstants constants = MovingRangeConstants.Exact)
    {
        var ranges = Of(values);
        return (centre, constants) switch
        {
            (MovingRangeCentre.Mean, MovingRangeConstants.Exact) => ranges.Average() / D2,
            (MovingRangeCentre.Mean, _) => ranges.Average() / 1.128,
            (_, MovingRangeConstants.Exact) => Summaries.Quantiles.Median(ranges) / Median,
            _ => Summaries.Quantiles.Median(ranges) / 0.954,
        };
    }
}
