using Analytics.Statistics.Results;

namespace Analytics.Statistics.Summaries;

/// <summary>What a percentile rank counts. The definitions differ by several points in a squad-sized group.</summary>
public enum RankDefinition
{
    /// <summary>Values below, of n. The best of ten gets 0.9.</summary>
    ShareBelow,

    /// <summary>Values below and half of the equal ones, of n: the only one of the four that treats high and low alike.</summary>
    ShareBelowAndHalfEqual,

    /// <summary>Values at or below, of n. The best gets 1.</summary>
    ShareAtOrBelow,

    /// <summary>Values below, of the n − 1 others. The best gets 1, the worst 0. For members of the group only.</summary>
    ShareOfOthersBelow,
}

/// <summary>Where a value stands in a group, from 0 to 1.</summary>
/// <param name="Share">The rank, 0 to 1.</param>
/// <param name="Definition">What was counted.</param>
/// <param name="Below">Values below.</param>
/// <param name="Equal">Values equal to it, itself included if it is one of them.</param>
/// <param name="N">Values in the group.</param>
public sealed record PercentileRank(double Share, RankDefinition Definition, int Below, int Equal, int N) : Result
{
    /// <summary>Rank of a value among others.</summary>
    /// <param name="group">At least one finite value; two for <see cref="RankDefinition.ShareOfOthersBelow"/>.</param>
    /// <param name="value">The value to place, a member of the group or not.</param>
    /// <param name="definition">What is counted.</param>
    /// <exception cref="ArgumentException">The value is not in the group and the definition speaks of the others in it.</exception>
    public static PercentileRank Of(IReadOnlyList<double> group, double value, RankDefinition definition = RankDefinition.ShareBelowAndHalfEqual)
    {
        Require.Sample(group, definition == RankDefinition.ShareOfOthersBelow ? 2 : 1, nameof(group));
        Require.Finite(value, nameof(value));
        int below = group.Count(v => v < value), equal = group.Count(v => v == value), n = group.Count;
        if (definition == RankDefinition.ShareOfOthersBelow && equal == 0)
            throw new ArgumentException(FormattableString.Invariant($"{value} is not one of the {n} values; {definition} ranks a member among the others."), nameof(value));
        var share = definition switch
        {
            RankDefinition.ShareBelow => (double)below / n,
            RankDefinition.ShareBelowAndHalfEqual => (below + 0.5 * equal) / n,
            RankDefinition.ShareAtOrBelow => (double)(below + equal) / n,
            RankDefinition.ShareOfOthersBelow => (double)below / (n - 1),
            _ => throw new ArgumentOutOfRangeException(nameof(definition), definition, $"{definition} is not a known definition."),
        };
        return new(share, definition, below, equal, n);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Percentile rank", Definition switch
        {
            RankDefinition.ShareBelow => "values below, of all",
            RankDefinition.ShareBelowAndHalfEqual => "values below and half of the equal ones, of all",
            RankDefinition.ShareAtOrBelow => "values at or below, of all",
            _ => "values below, of the others",
        },
        [new("percentile rank", 100 * Share, "%"), new("below", Below), new("equal", Equal)])
    { Basis = $"{N} values" };
}
