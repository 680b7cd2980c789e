using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Reliability;

/// <summary>The error of one test occasion of one athlete, as a standard deviation, in the unit of the test.</summary>
/// <remarks>
/// Also called the standard error of measurement or the within-athlete standard deviation [hopkins2000; weir2005].
/// It speaks about the occasions that were repeated: repeats minutes apart hold no day-to-day variation.
/// </remarks>
public sealed record TypicalError : Result
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

    /// <summary>
    /// Minimal detectable change as it is mostly printed: √2 z TE, the error taken as known [weir2005]. With few degrees of freedom unchanged
    /// athletes pass it too often; <see cref="DetectableChange"/> allows for that.
    /// </summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public double DetectableChangeOfKnownError(double level = 0.95) => Math.Sqrt(2) * Value * NormalLaw.TwoSided(level);

    /// <summary><see cref="DetectableChange"/> with the interval it inherits from the typical error.</summary>
    /// <param name="level">Coverage of the change, above 0 and below 1.</param>
    /// <param name="confidence">Coverage of the interval, above 0 and below 1.</param>
    public Estimate MinimalDetectableChange(double level = 0.95, double confidence = 0.95) => Multiple(
        StudentLaw.TwoSided(level, DegreesOfFreedom), confidence,
        FormattableString.Invariant($"√2 t TE at {100 * level:0.##} %, t with {DegreesOfFreedom:0.#} df"));

    /// <summary>Repeatability coefficient: multiplier × √2 × TE, below which the difference of two tests of an unchanged athlete should lie [blandaltman1986].</summary>
    /// <param name="multiplier">2 in the source; 1.96 and 1.959964 are also printed. Above 0.</param>
    /// <param name="confidence">Coverage of the interval, above 0 and below 1.</param>
    public Estimate RepeatabilityCoefficient(double multiplier = 2, double confidence = 0.95)
        => Multiple(Require.Positive(multiplier, nameof(multiplier)), confidence, FormattableString.Invariant($"{multiplier} √2 TE [blandaltman1986]"));

    /// <summary>Error of the mean of several trials of one occasion: TE/√m, where the trials err independently.</summary>
    /// <param name="trials">m, at least 1.</param>
    public double OfMean(int trials) => Value / Math.Sqrt(Require.AtLeast(trials, 1, nameof(trials)));

    /// <inheritdoc/>
    public override ResultSheet Sheet()
    {
        var change = MinimalDetectableChange();
        return new(
            "Typical error", $"{Method} [hopkins2000]",
            [
                new("typical error", Value) { Interval = Interval(), DegreesOfFreedom = DegreesOfFreedom },
                new("the same, 90 % interval", Value) { Interval = Interval(0.90) },
                new("minimal detectable change", change.Value) { Interval = change.Interval, Note = "95 %: an unchanged athlete passes it 1 time in 20" },
                new("the same, error taken as known", DetectableChangeOfKnownError()),
            ])
        {
            Basis = (Athletes > 0 ? $"{Athletes} athletes with a repeat" : "an error known from elsewhere")
                + (WithoutRepeat > 0 ? $"; {WithoutRepeat} without a repeat say nothing about error" : string.Empty),
            Remarks = Value > 0 ? [] : ["Every repeat agrees exactly, which speaks of rounding or copied values, not of a test without error."],
        };
    }

    private Estimate Multiple(double multiplier, double confidence, string method)
    {
        var factor = Math.Sqrt(2) * multiplier;
        return new(factor * Value, null, Interval(confidence).Times(factor), Athletes, method);
    }
}
