namespace Analytics.Metrics.Catalogue;

/// <summary>
/// Error of the equation that made a value, as far as a retest does not show it: what the equation gets wrong about a person returns on
/// every day the value is made the same way. All parts are standard errors in the metric's unit, 0 or more, independent of each other.
/// </summary>
/// <param name="Equation">What made the value. Values of two equations share no error.</param>
/// <param name="Personal">Lasting error that differs between persons: this one always does more repetitions than the equation expects.</param>
/// <param name="Shared">Lasting error common to everybody measured with it: nobody knows which equation fits this squad.</param>
/// <param name="Fresh">Error made anew on every day: a misjudged reserve, the part of a repetition that a count leaves out. A retest of values made this way holds it.</param>
/// <param name="Repetitions">Effective repetitions it was extrapolated from; null when the equation always extrapolates the same way.</param>
/// <remarks>See docs/methods/change.md, "Measured one day, estimated the other".</remarks>
public sealed record EquationError(string Equation, double Personal, double Shared = 0, double Fresh = 0, double? Repetitions = null)
{
    /// <summary>Variance of the error that returns, in the metric's unit squared.</summary>
    public double LastingVariance => Personal * Personal + Shared * Shared;

    /// <summary>Variance of everything, in the metric's unit squared.</summary>
    public double Variance => LastingVariance + Fresh * Fresh;

    /// <summary>The error of the value times a positive factor (a change of unit, a division by body mass).</summary>
    /// <param name="factor">Positive and finite.</param>
    public EquationError Times(double factor) => this with { Personal = Personal * factor, Shared = Shared * factor, Fresh = Fresh * factor };

    /// <summary>
    /// Error of the mean of some attempts of one day, or null when all were measured: lasting errors are the same in each, fresh ones are not.
    /// A measured attempt adds none.
    /// </summary>
    internal static EquationError? OfMean(IReadOnlyList<TrialValue> attempts)
    {
        var errors = attempts.Select(a => a.Equation).OfType<EquationError>().ToList();
        if (errors.Count == 0) return null;
        var repetitions = errors.Select(e => e.Repetitions).Distinct().ToList();
        return new(
            string.Join(" and ", errors.Select(e => e.Equation).Distinct()),
            errors.Sum(e => e.Personal) / attempts.Count,
            errors.Sum(e => e.Shared) / attempts.Count,
            Math.Sqrt(errors.Sum(e => e.Fresh * e.Fresh)) / attempts.Count,
            repetitions.Count == 1 ? repetitions[0] : errors.Average(e => e.Repetitions));
    }
}
