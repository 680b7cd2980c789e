using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Change;

/// <summary>Change of a group between two occasions, from the differences of those who did both.</summary>
/// <param name="Mean">Mean change with Student's t interval; no interval for a single athlete.</param>
/// <param name="StandardDeviation">SD of the individual differences; null for a single athlete. It holds test error on both occasions as well as true differences in response.</param>
public sealed record MeanChange(Estimate Mean, double? StandardDeviation) : Result
{
    /// <summary>Typical error if no athlete truly changed by another amount than the rest: SD of the differences/√2; null for a single athlete.</summary>
    public double? TypicalErrorIfAllChangedAlike => StandardDeviation / Math.Sqrt(2);

    /// <summary>The mean as a change with its error, for a verdict; null for a single athlete.</summary>
    public IndividualChange? AsChange { get; private init; }

    /// <summary>
    /// The same with a known error that all athletes share, such as that of an equation used on one of the occasions only: it does not average out. Degrees
    /// of freedom by Welch and Satterthwaite. Unchanged when there is no interval to widen.
    /// </summary>
    /// <param name="standardError">Standard error of the mean shift it causes, in the unit of the test; the sign does not matter.</param>
    public MeanChange WithSharedError(double standardError)
    {
        if (standardError == 0 || AsChange is not { StandardError: > 0 } own || Mean.Interval is not { } interval) return this;
        var wider = own.WithKnownError(Math.Abs(standardError));
        return this with
        {
            AsChange = wider,
            Mean = Mean with { StandardError = wider.StandardError, Interval = wider.Interval(interval.Level), Method = Mean.Method + ", shared error added" },
        };
    }

    /// <summary>Mean change with its interval.</summary>
    /// <param name="differences">After minus before, one an athlete; at least one.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static MeanChange Of(IReadOnlyList<double> differences, double level = 0.95)
    {
        var mean = MeanEstimate.Of(differences, level);
        return new(mean, differences.Count > 1 ? Moments.StandardDeviation(differences) : null)
        {
            AsChange = mean.StandardError is { } error ? new(mean.Value, error, mean.N - 1) : null,
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Mean change of a group", Mean.Method,
        [
            new("mean change", Mean.Value) { Interval = Mean.Interval, StandardError = Mean.StandardError, DegreesOfFreedom = AsChange?.DegreesOfFreedom },
            new("SD of changes", StandardDeviation) { Note = StandardDeviation is null ? "none: one athlete" : "holds test error as well as true differences" },
        ])
    { Basis = FormattableString.Invariant($"{Mean.N} {(Mean.N == 1 ? "athlete" : "athletes")} tested on both occasions") };
}
