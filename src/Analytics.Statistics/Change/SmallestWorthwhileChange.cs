using Analytics.Statistics.Results;

namespace Analytics.Statistics.Change;

/// <summary>The smallest change that would matter, and how it was chosen. It is a choice, not an estimate of error.</summary>
/// <param name="Value">In the unit of the test, above 0; null when none can be stated, with the reason in <paramref name="Basis"/>.</param>
/// <param name="Basis">How it was chosen, in words a report can print.</param>
/// <param name="TrueVariance">Variance between athletes freed of error where it was used, negative values kept; else null.</param>
public sealed record SmallestWorthwhileChange(double? Value, string Basis, double? TrueVariance = null) : Result
{
    /// <summary>Share of the observed SD between athletes; 0.2 is common [hopkins2004]. The observed SD holds test error, so this is a little large.</summary>
    /// <param name="standardDeviation">Observed SD between athletes, 0 or more; 0 gives no value.</param>
    /// <param name="share">Share, above 0.</param>
    /// <param name="among">Whose spread it is, for the text.</param>
    public static SmallestWorthwhileChange OfObservedSpread(double standardDeviation, double share = 0.2, string among = "athletes")
    {
        Require.Positive(share, nameof(share));
        return Require.NotNegative(standardDeviation, nameof(standardDeviation)) > 0
            ? new(share * standardDeviation, FormattableString.Invariant($"{share} of the observed SD between {among}"))
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
            ? new(share * Math.Sqrt(variance), FormattableString.Invariant($"{share} of the SD between {among}, test error taken off"), variance)
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
            new("smallest worthwhile change", Value) { Note = Value is null ? Basis : "" },
            .. TrueVariance is { } variance
                ? (ResultLine[])[new("variance between athletes", variance) { Note = "test error taken off; negative values kept" }]
                : [],
        ])
    {
        Basis = "a choice, not an estimate of error",
        Remarks = ["A change larger than this is no evidence of a true change: test error alone often is."],
    };
}
