using Analytics.Metrics.Profile;
using Analytics.Statistics.Screening;
using Analytics.Statistics.Summaries;

namespace Analytics.Metrics.Bench;

/// <summary>A value far from the rest of its group.</summary>
/// <param name="AthleteId">The athlete.</param>
/// <param name="Value">In the metric's unit.</param>
/// <param name="Distance">Distance from the middle of the group in robust spreads, with its sign.</param>
public sealed record FarValue(string AthleteId, double Value, double Distance);

/// <summary>How a metric lies in one group on one occasion.</summary>
/// <param name="Group">The group.</param>
/// <param name="N">Athletes.</param>
/// <param name="Median">Middle, in the metric's unit.</param>
/// <param name="StandardDeviation">Spread, test error included; null for one athlete.</param>
/// <param name="Lowest">Lowest value.</param>
/// <param name="Highest">Highest value.</param>
/// <param name="Far">Values beyond 3.5 robust spreads from the middle of their group, the spread pooled over groups of four or more [iglewiczhoaglin1993].</param>
public sealed record GroupDistribution(string Group, int N, double Median, double? StandardDeviation, double Lowest, double Highest, IReadOnlyList<FarValue> Far)
{
    /// <summary>Fewest athletes of a squad for values to be called far.</summary>
    private const int Fewest = 5;

    /// <summary>Fewest athletes of a group to take part in that.</summary>
    private const int FewestOfGroup = 4;

    internal static IReadOnlyList<GroupDistribution> Of(OccasionValues values, SquadProfile profile)
    {
        var groups = profile.Squad.DistinctBy(m => m.Id).Where(m => values.Of(m.Id) is not null).GroupBy(m => m.Group)
            .Select(g => (Group: g.Key, Rows: g.Select(m => (m.Id, Value: values.Of(m.Id)!.Value)).ToList())).ToList();
        // The middle of three is one of them and lies close to the others: small groups would make the spread look small.
        var rows = groups.Where(g => g.Rows.Count >= FewestOfGroup).SelectMany(g => g.Rows.Select(r => (r.Id, r.Value, Distance: r.Value - Quantiles.Median([.. g.Rows.Select(x => x.Value)])))).ToList();
        var far = rows.Count < Fewest || Flat.Is(values.Athletes.Select(a => values.Of(a)!.Value)) ? [] : ModifiedZScreen.Of([.. rows.Select(r => r.Distance)]).Named
            .ToDictionary(n => rows[n.Index].Id, n => new FarValue(rows[n.Index].Id, rows[n.Index].Value, n.Statistic), StringComparer.Ordinal);
        return [.. groups.Select(g =>
        {
            double[] all = [.. g.Rows.Select(r => r.Value)];
            return new GroupDistribution(g.Group, all.Length, Quantiles.Median(all), all.Length > 1 ? Moments.StandardDeviation(all) : null, all.Min(), all.Max(),
                [.. g.Rows.Where(r => far.ContainsKey(r.Id)).Select(r => far[r.Id])]);
        })];
    }
}
