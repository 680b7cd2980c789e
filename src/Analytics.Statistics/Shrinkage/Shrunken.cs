using Analytics.Statistics.Results;

namespace Analytics.Statistics.Shrinkage;

/// <summary>A value pulled toward a centre by how little it can be trusted.</summary>
/// <param name="Raw">The value as observed.</param>
/// <param name="Value">The shrunken value: centre + weight (raw − centre).</param>
/// <param name="Weight">Weight on the own value, 0 (nothing of its own) to 1 (not shrunken).</param>
/// <param name="Centre">What it was pulled toward.</param>
/// <param name="StandardError">Standard error of the true value, centre and between-variance taken as known.</param>
public sealed record Shrunken(double Raw, double Value, double Weight, double Centre, double StandardError) : Result
{
    /// <summary>Normal-normal shrinkage: weight τ²/(τ² + s²), error √(τ² s²/(τ² + s²)).</summary>
    /// <param name="raw">Observed value.</param>
    /// <param name="standardError">Its standard error s, 0 or more.</param>
    /// <param name="centre">Centre of the true values.</param>
    /// <param name="betweenVariance">Variance of the true values τ², 0 or more; 0 pulls all the way to the centre.</param>
    public static Shrunken Toward(double raw, double standardError, double centre, double betweenVariance)
    {
        Require.Finite(raw, nameof(raw));
        Require.Finite(centre, nameof(centre));
        var error = Math.Pow(Require.NotNegative(standardError, nameof(standardError)), 2);
        Require.NotNegative(betweenVariance, nameof(betweenVariance));
        // A value without error is kept, whatever the others look like.
        var weight = error == 0 ? 1 : betweenVariance / (betweenVariance + error);
        return new(raw, centre + weight * (raw - centre), weight, centre, Math.Sqrt(weight * error));
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Shrunken value", "weighted mean of the value and the centre",
        [
            new("value", Value) { StandardError = StandardError },
            new("raw", Raw),
            new("centre", Centre),
            new("weight on the own value", Weight),
        ])
    { Basis = "one value, its error, and the spread of all" };

    // One line of a table of several.
    internal ResultLine Line(int index) => new(FormattableString.Invariant($"value {index + 1}"), Value)
    {
        StandardError = StandardError,
        Note = FormattableString.Invariant($"raw {Raw:0.####}, weight {Weight:0.###}"),
    };
}
