using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Screening;

/// <summary>Modified z of every value: distance from the median in robust spreads; above 3.5 is worth a look [iglewiczhoaglin1993].</summary>
/// <remarks>The rate of false alarms is not controlled: with normal values it is about 1 value in 2,000 for large n and more for small n.</remarks>
public sealed record ModifiedZScreen : Result
{
    /// <summary>Centre and spread used.</summary>
    public required RobustSummary Robust { get; init; }

    /// <summary>Modified z of each value, in the order given; all 0 when all values are equal.</summary>
    public required IReadOnlyList<double> Scores { get; init; }

    /// <summary>Scores beyond this, on either side, are named.</summary>
    public required double Limit { get; init; }

    /// <summary>Values beyond the limit, farthest first.</summary>
    public required IReadOnlyList<ScreenedValue> Named { get; init; }

    /// <summary>Screens a sample. The printed form 0.6745 (x − median)/MAD is the same to four digits; here 0.6745 is Φ⁻¹(0.75) in full.</summary>
    /// <param name="values">At least three finite values.</param>
    /// <param name="limit">Above 0; 3.5 is usual.</param>
    public static ModifiedZScreen Of(IReadOnlyList<double> values, double limit = 3.5)
    {
        Require.Sample(values, 3, nameof(values));
        Require.Positive(limit, nameof(limit));
        var robust = RobustSummary.Of(values);
        double[] scores = [.. values.Select(v => robust.Spread is { } s ? (v - robust.Median) / s : 0)];
        return new()
        {
            Robust = robust,
            Scores = scores,
            Limit = limit,
            Named = [.. scores.Select((z, i) => new ScreenedValue(i, values[i], z)).Where(v => Math.Abs(v.Statistic) > limit).OrderByDescending(v => Math.Abs(v.Statistic))],
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Values far from the rest", "modified z by median and scaled absolute deviation [iglewiczhoaglin1993]",
        [
            new("values named", Named.Count) { Note = FormattableString.Invariant($"modified z beyond ±{Limit}") },
            .. Named.Select(v => new ResultLine($"value {v.Index + 1}", v.Value) { Note = FormattableString.Invariant($"modified z {v.Statistic:0.00}") }),
        ])
    {
        Basis = $"{Robust.N} values",
        Remarks = Robust.Source == SpreadSource.None ? ["All values are equal: none is far from the rest."] : ["Named values stay in the data."],
    };
}
