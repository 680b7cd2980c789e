using Analytics.Statistics.Results;

namespace Analytics.Statistics;

/// <summary>A number with its doubt: how it was made, from how much, and how far it may be off.</summary>
/// <param name="Value">The point estimate.</param>
/// <param name="StandardError">Standard error in the unit of the value; null when no error is known.</param>
/// <param name="Interval">Interval in the unit of the value; null when no error is known.</param>
/// <param name="N">Observations behind it.</param>
/// <param name="Method">Name of the method, in words a report can print.</param>
public sealed record Estimate(double Value, double? StandardError, Interval? Interval, int N, string Method) : Result
{
    /// <summary>An estimate in another unit.</summary>
    /// <param name="factor">New units in one old unit; positive and finite.</param>
    public Estimate Times(double factor)
    {
        Require.AnyPositive(factor, nameof(factor));
        return this with { Value = Value * factor, StandardError = StandardError * factor, Interval = Interval?.Times(factor) };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Estimate", Method,
    [
        new("value", Value) { Interval = Interval, StandardError = StandardError, Note = StandardError is null && Interval is null ? "no error known" : string.Empty },
    ]) { Basis = N == 1 ? "1 observation" : FormattableString.Invariant($"{N} observations") };
}
