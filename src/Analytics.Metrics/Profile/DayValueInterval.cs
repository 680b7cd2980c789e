using Analytics.Statistics;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Profile;

/// <summary>Where an athlete's usual level lies, judged by the value of one day.</summary>
/// <remarks>
/// It speaks of the level about which the athlete's days scatter, not of that day's performance: what was lifted was lifted. For a 1RM estimated from
/// repetitions it speaks of the 1RM that would be measured. See docs/methods/standing.md.
/// </remarks>
/// <param name="Interval">Value ± Student's t times <paramref name="StandardError"/>, in the metric's unit.</param>
/// <param name="StandardError">Typical error and the equation's error together, in the metric's unit.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom by Welch and Satterthwaite; infinity when the error is taken as known.</param>
/// <param name="HoldsDayToDayVariation">False when only the value's own fit or same-day attempts tell of error: then it is too narrow for the usual level.</param>
/// <param name="Basis">What the error is made of, in words a report can print.</param>
public sealed record DayValueInterval(Interval Interval, double StandardError, double DegreesOfFreedom, bool HoldsDayToDayVariation, string Basis)
{
    /// <summary>The interval of a value; null when nothing is known of its error.</summary>
    internal static DayValueInterval? Of(DayValue value, MetricReliability reliability, double level)
    {
        var (error, degrees, basis) = Own(value, reliability);
        var equation = Math.Sqrt(EquationVariance(value, reliability));
        if (error is not > 0 && equation <= 0) return null;

        var known = error is > 0
            ? new IndividualChange(value.Value, error.Value, degrees).WithKnownError(equation)
            : new IndividualChange(value.Value, equation, double.PositiveInfinity);
        if (equation > 0) basis = basis.Length == 0 ? "error of the equation" : basis + ", and the error of the equation";
        return new(known.Interval(level), known.StandardError, known.DegreesOfFreedom, error is > 0 && reliability.HoldsDayToDayVariation, basis);
    }

    /// <summary>Variance the equation adds to TE²: all of it, or its lasting part when the retest holds the fresh one.</summary>
    internal static double EquationVariance(DayValue value, MetricReliability reliability)
        => (reliability.HoldsFreshEquationError ? value.Equation?.LastingVariance : value.Equation?.Variance) ?? 0;

    // A retest holds a fit's error, so the two are never added; without a retest the fit's is better than attempts that may be few.
    private static (double? Error, double Degrees, string Basis) Own(DayValue value, MetricReliability reliability)
    {
        if (!reliability.HoldsDayToDayVariation && value.Equation is null && value.StandardError is > 0)
            return (value.StandardError, value.ErrorDegreesOfFreedom ?? double.PositiveInfinity, "error of the value's own fit, day-to-day variation missing");
        return (reliability.ErrorAt(value.Value), reliability.DegreesOfFreedom, reliability.Error is null ? "" : reliability.Basis);
    }
}
