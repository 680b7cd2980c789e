using Analytics.Metrics.Profile;
using Analytics.Statistics.Summaries;

namespace Analytics.Notebooks.AthletePage;

/// <summary>The middle a player is drawn against: a mean and a spread, never one player's value.</summary>
/// <param name="IsGroup">Whether it is the position group; else the whole squad.</param>
/// <param name="Middle">In the metric's unit.</param>
/// <param name="Spread">SD between players, in the metric's unit; above 0.</param>
internal sealed record Comparison(bool IsGroup, double Middle, double Spread)
{
    /// <summary>The position group where enough players did the test, else the squad, else nothing.</summary>
    /// <remarks>A median is not used: in an odd group it is one player's value.</remarks>
    public static Comparison? Of(GroupStanding standing, string group)
    {
        var own = standing.Groups.FirstOrDefault(g => g.Group == group);
        if (own is { Values.N: >= SquadBook.FewestCompared } && standing.Spread is { StandardDeviation: > 0 } spread)
            return new(true, own.Middle, spread.StandardDeviation);
        var all = standing.Day.Values.Select(v => v.Value).ToArray();
        return all.Length >= SquadBook.FewestCompared && Math.Sqrt(Moments.Variance(all)) is > 0 and var deviation ? new(false, Moments.Mean(all), deviation) : null;
    }
}
