using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Reliability;

/// <summary>The error of one test occasion of one athlete, as a standard deviation, in the unit of the test.</summary>
/// <remarks>
/// Also called the standard error of measurement or the within-athlete standard deviation [hopkins2000; weir2005].
/// It speaks about the occasions that were repeated: repeats minutes apart hold no day-to-day variation.
/// </remarks>
public sealed record TypicalError
{
    /// <summary>The typical error, in the unit of the test.</summary>
    public required double Value { get; init; }

    /// <summary>Degrees of freedom; infinity when the error is taken as known.</summary>
    public required double DegreesOfFreedom { get; init; }

    /// <summary>Athletes with a repeat, whose values made the estimate; 0 for an error taken as known.</summary>
    public required int Athletes { get; init; }

    /// <summary>Athletes tested once only: they cannot speak about error and are counted here, not lost.</summary>
    public int WithoutRepeat { get; init; }

    /// <summary>How it was made, in words a report can print.</summary>
    public required string Method { get; init; }

    /// <summary>An error known from elsewhere, for example from a published study.</summary>
    /// <param name="value">Above 0, in the unit of the test.</param>
    /// <param name="method">Where it is from, in words a report can print.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom of that study; infinity when they are not stated.</param>
    public static TypicalError Known(double value, string method, double degreesOfFreedom = double.PositiveInfinity) => new()
    {
        Value = Require.Positive(value, nameof(value)),
        DegreesOfFreedom = Require.DegreesOfFreedom(degreesOfFreedom, nameof(degreesOfFreedom)),
        Athletes = 0,
        Method = method,
    };

    /// <summary>Interval by chi-square: TE √(df/χ²). Exact for normal errors. A known error has no width.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Interval Interval(double level = 0.95)
    {
        Require.Share(level, nameof(level));
        if (double.IsPositiveInfinity(DegreesOfFreedom)) return new(Value, Value, level);
        return new(
            Value * Math.Sqrt(DegreesOfFreedom / ChiSquareLaw.Quantile((1 + level) / 2, DegreesOfFreedom)),
            Value * Math.Sqrt(DegreesOfFreedom / ChiSquareLaw.Quantile((1 - level) / 2, DegreesOfFreedom)),
            level);
    }

    /// <summary>
    /// Minimal detectable change between two occasions: √2 TE t. An unchanged athlete passes it at the rate 1 − level on average;
    /// an athlete whose true change is exactly this passes it only about half the time.
    /// </summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public double DetectableChange(double level = 0.95) => Math.Sqrt(2) * Value * StudentLaw.TwoSided(level, DegreesOfFreedom);
}
