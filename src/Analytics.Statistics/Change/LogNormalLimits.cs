using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Change;

/// <summary>Percent limits an unchanged athlete's change stays in when the error of a test is log-normal [fokkema2006].</summary>
/// <param name="Sigma">SD of the natural logarithm of one test, √ln(1 + CV²).</param>
/// <param name="Limits">Fall and rise in percent: 100 (exp(∓z √2 σ) − 1). The fall is smaller than the rise.</param>
/// <param name="Symmetric">± z √2 CV in percent, the limit that forgets the skew; for comparison.</param>
public sealed record LogNormalLimits(double Sigma, Interval Limits, double Symmetric) : Result
{
    /// <summary>Limits for a coefficient of variation.</summary>
    /// <param name="percent">Coefficient of variation of one test, percent, above 0.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static LogNormalLimits Of(double percent, double level = 0.95)
    {
        var cv = Require.Positive(percent, nameof(percent)) / 100;
        var sigma = Math.Sqrt(Math.Log(1 + cv * cv));
        var z = NormalLaw.TwoSided(level) * Math.Sqrt(2);
        return new(sigma, new(100 * (Math.Exp(-z * sigma) - 1), 100 * (Math.Exp(z * sigma) - 1), level), z * percent);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Limits of change by chance", "log-normal error, known coefficient of variation [fokkema2006]",
        [
            new("rise", Limits.High, "%"),
            new("fall", Limits.Low, "%"),
            new("symmetric limit", Symmetric, "%") { Note = "too wide downward, too narrow upward" },
        ])
    { Basis = FormattableString.Invariant($"σ of the logarithm {Sigma:0.####}; {100 * Limits.Level:0.##} % of unchanged athletes stay inside") };
}
