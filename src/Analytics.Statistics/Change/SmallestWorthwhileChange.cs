using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Change;

/// <summary>The smallest change that would matter, and how it was chosen. It is a choice, not an estimate of error.</summary>
/// <param name="Value">In the unit of the test, above 0; null when none can be stated, with the reason in <paramref name="Basis"/>.</param>
/// <param name="Basis">How it was chosen, in words a report can print.</param>
/// <param name="TrueVariance">Variance between athletes freed of error where it was used, negative values kept; else null.</param>
public sealed record SmallestWorthwhileChange(double? Value, string Basis, double? TrueVariance = null) : Result
{
    /// <summary>Interval of the value where it rests on a spread of known sample size; null for an anchor, or when the size was not given.</summary>
    public Interval? Interval { get; private init; }

    /// <summary>The same with the interval that the number of athletes behind the spread gives.</summary>
    /// <remarks>
    /// An observed SD has its chi-square interval. One freed of error has the normal interval of the difference of two variances, cut at 0: a lower limit
    /// of 0 says that there may be no spread between athletes at all.
    /// </remarks>
    /// <param name="athletes">Athletes behind the SD, at least 2.</param>
    /// <param name="errorDegrees">Degrees of freedom of the typical error taken off; infinity when known, of no account for an observed SD.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public SmallestWorthwhileChange WithDoubt(int athletes, double errorDegrees = double.PositiveInfinity, double level = 0.95)
    {
        double df = Require.AtLeast(athletes, 2, nameof(athletes)) - 1;
        Require.DegreesOfFreedom(errorDegrees, nameof(errorDegrees));
        Require.Share(level, nameof(level));
        if (Value is not { } value || ObservedVariance is not { } observed) return this;
        if (TrueVariance is not { } variance)
        {
            double End(double p) => value * Math.Sqrt(df / ChiSquareLaw.Quantile(p, df));
            return this with { Interval = new(End((1 + level) / 2), End((1 - level) / 2), level) };
        }

        var limits = VarianceDifference.Of(observed, df, observed - variance, errorDegrees).Interval(level);
        return this with { Interval = new(value * Math.Sqrt(Math.Max(0, limits.Low) / variance), value * Math.Sqrt(limits.High / variance), level) };
    }

    private double? ObservedVariance { get; init; }

    /// <summary>Share of the observed SD between athletes; 0.2 is common [hopkins2004]. The observed SD holds test error, so this is a little large.</summary>
    /// <param name="standardDeviation">Observed SD between athletes, 0 or more; 0 gives no value.</param>
    /// <param name="share">Share, above 0.</param>
    /// <param name="among">Whose spread it is, for the text.</param>
    public static SmallestWorthwhileChange OfObservedSpread(double standardDeviation, double share = 0.2, string among = "athletes")
    {
        Require.Positive(share, nameof(share));
        return Require.NotNegative(standardDeviation, nameof(standardDeviation)) > 0
            ? new(share * standardDeviation, FormattableString.Invariant($"{share} of the observed SD between {among}")) { ObservedVariance = standardDeviation * standardDeviation }
            : new(null, $"none: {among} do not differ");
    }

    /// <summary>Share of the SD between athletes freed of test error: √(SD² − TE²/k).</summary>
    /// <remarks>A difference of 0 or less is reported with no value: no spread between athletes was found beyond error.</remarks>
    /// <param name="standardDeviation">Observed SD of the athletes' values, 0 or more.</param>
    /// <param name="typicalError">Typical error of one occasion, 0 or more.</param>
    /// <param name="occasions">Occasions averaged in each value, k, at least 1.</param>
    /// <param name="share">Share, above 0.</param>
    /// <param name="among">Whose spread it is, for the text.</param>
    public static SmallestWorthwhileChange OfTrueSpread(
        double standardDeviation, double typicalError, int occasions = 1, double share = 0.2, string among = "athletes")
    {
        Require.Positive(share, nameof(share));
        Require.AtLeast(occasions, 1, nameof(occasions));
        var variance = Math.Pow(Require.NotNegative(standardDeviation, nameof(standardDeviation)), 2)
            - Math.Pow(Require.NotNegative(typicalError, nameof(typicalError)), 2) / occasions;
        return variance > 0
            ? new(share * Math.Sqrt(variance), FormattableString.Invariant($"{share} of the SD between {among}, test error taken off"), variance) { ObservedVariance = standardDeviation * standardDeviation }
            : new(null, $"none: no between-athlete variance was found among {among} beyond test error", variance);
    }

    /// <summary>A value set by a person or a source, for example what decides a race or a selection.</summary>
    /// <param name="value">In the unit of the test, above 0.</param>
    /// <param name="basis">Who set it and why, in words a report can print.</param>
    public static SmallestWorthwhileChange Anchored(double value, string basis) => new(Require.Positive(value, nameof(value)), basis);

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Smallest worthwhile change", Basis,
        [
            new("smallest worthwhile change", Value) { Interval = Interval, Note = Value is null ? Basis : "" },
            .. TrueVariance is { } variance
                ? (ResultLine[])[new("variance between athletes", variance) { Note = "test error taken off; negative values kept" }]
                : [],
        ])
    {
        Basis = "a choice, not an estimate of error",
        Remarks = ["A change larger than this is no evidence of a true change: test error alone often is."],
    };
}
