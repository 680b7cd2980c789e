using Analytics.Metrics.Profile;

namespace Analytics.Metrics.Bench;

/// <summary>Athletes who have a mate in their group, for figures that tell players of a group apart, not linemen from backs.</summary>
/// <param name="Athletes">The athletes, by identifier.</param>
/// <param name="Groups">Number of groups.</param>
/// <param name="Of">Group of each athlete, as a number from 0.</param>
internal sealed record GroupCentred(IReadOnlyList<string> Athletes, int Groups, IReadOnlyList<int> Of)
{
    public static GroupCentred From(IEnumerable<string> athletes, SquadProfile profile)
    {
        var groups = profile.Squad.DistinctBy(m => m.Id).ToDictionary(m => m.Id, m => m.Group, StringComparer.Ordinal);
        var known = athletes.Where(groups.ContainsKey).GroupBy(a => groups[a], StringComparer.Ordinal).Where(g => g.Count() > 1).ToList();
        var number = known.SelectMany((g, i) => g.Select(a => (a, i))).ToDictionary(p => p.a, p => p.i, StringComparer.Ordinal);
        List<string> kept = [.. number.Keys.Order(StringComparer.Ordinal)];
        return new(kept, known.Count, [.. kept.Select(a => number[a])]);
    }

    /// <summary>Values of these athletes less the mean of their group; 0 where only rounding is left.</summary>
    public double[] Centre(Func<string, double> value)
    {
        double[] all = [.. Athletes.Select(value)];
        var means = all.Zip(Of).GroupBy(p => p.Second).ToDictionary(g => g.Key, g => g.Average(p => p.First));
        return [.. all.Zip(Of, (v, g) => Math.Abs(v - means[g]) > Flat.Rounding * Math.Abs(v) ? v - means[g] : 0)];
    }
}
