using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Change;

/// <summary>Difference of two independent variances, negative values kept, with its large-sample error √(2 (s₁⁴/df₁ + s₂⁴/df₂)).</summary>
internal readonly record struct VarianceDifference(double Value, double StandardError)
{
    public static VarianceDifference Of(double first, double firstDegrees, double second, double secondDegrees)
        => new(first - second, Math.Sqrt(2 * (first * first / firstDegrees + second * second / secondDegrees)));

    public Interval Interval(double level)
    {
        var reach = NormalLaw.TwoSided(level) * StandardError;
        return new(Value - reach, Value + reach, level);
    }

    /// <summary>Square root that keeps the sign: a negative variance stays visible as one.</summary>
    public static double SignedRoot(double variance) => Math.CopySign(Math.Sqrt(Math.Abs(variance)), variance);

    public static Interval SignedRoot(Interval variance) => variance with { Low = SignedRoot(variance.Low), High = SignedRoot(variance.High) };
}
