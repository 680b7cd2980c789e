using Analytics.Statistics.Distributions;
using Analytics.Statistics.Reliability;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Change;

/// <summary>Reliable change index of one person, from a published standard deviation and reliability [jacobsontruax1991].</summary>
/// <param name="Difference">After minus before.</param>
/// <param name="ErrorOfMeasurement">SEM = SD √(1 − r).</param>
public sealed record ReliableChangeIndex(double Difference, double ErrorOfMeasurement) : Result
{
    /// <summary>Standard error of a difference, √2 SEM.</summary>
    public double ErrorOfDifference => Math.Sqrt(2) * ErrorOfMeasurement;

    /// <summary>Difference over its standard error; beyond ±1.96 an unchanged person comes once in twenty, if the error is known exactly.</summary>
    public double Value => Difference / ErrorOfDifference;

    /// <summary>Rate at which an unchanged person shows an index of this size or more.</summary>
    public double P => 2 * NormalLaw.Cdf(-Math.Abs(Value));

    /// <summary>The index of a change.</summary>
    /// <param name="before">Score before.</param>
    /// <param name="after">Score after.</param>
    /// <param name="standardDeviation">SD of scores, above 0.</param>
    /// <param name="reliability">Reliability, 0 to below 1.</param>
    public static ReliableChangeIndex Of(double before, double after, double standardDeviation, double reliability)
        => new(
            Require.Finite(after, nameof(after)) - Require.Finite(before, nameof(before)),
            Require.Positive(IntraclassCorrelation.StandardErrorOfMeasurement(standardDeviation, reliability), nameof(reliability)));

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Reliable change index", "difference over √2 SD √(1 − r) [jacobsontruax1991]",
        [
            new("index", Value) { Note = SheetProbability.Of(P) + " for an unchanged person" },
            new("difference", Difference) { StandardError = ErrorOfDifference },
            new("standard error of measurement", ErrorOfMeasurement),
        ])
    {
        Basis = "one change; SD and reliability taken as known",
        Remarks = ["When the reliability is of a small study the error is not known, and the index flags too often."],
    };
}
