using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Statistics.Association;
using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.Bench;

/// <summary>The one or two library metrics that give most of another metric, within groups.</summary>
internal static class BestOfTwo
{
    public sealed record Remaining(IReadOnlyList<Metric> Others, OwnShare Own, string Basis);

    // Gains of this size come with sums in another order.
    private const double Rounding = 1e-9;

    private sealed record Columns(double[] First, double[] Second)
    {
        public double[] Mean { get; } = [.. First.Zip(Second, (a, b) => (a + b) / 2)];
    }

    /// <summary>From two retest days; null when no library metric was done by enough of the athletes.</summary>
    /// <remarks>
    /// All pairs are tried: two metrics that go together may give little each and all of a ratio of them. The best of many gives something by chance too, so the share left reads low:
    /// of a metric with nothing in common with 30 others, 0.74 on average instead of 1 for 40 players in 4 groups, 0.56 for 24 (40 seeded squads each). It errs toward "nothing new".
    /// </remarks>
    public static Remaining? On(BenchSquad squad, SeasonValues values, RetestColumns days)
    {
        var wanted = Math.Max(squad.Rule.Fewest, squad.Rule.LeastShared * days.Athletes.Count);
        var able = squad.Library.Select(m => (Metric: m, Values: squad.Values(m))).Select(m => (m.Metric, m.Values, Has: days.Athletes.Where(a => days.Pair(m.Values, a) is not null).ToHashSet(StringComparer.Ordinal)))
            .Where(m => m.Has.Count >= wanted).ToList();
        var (sets, made) = (new Dictionary<string, GroupCentred>(StringComparer.Ordinal), new Dictionary<(Metric, GroupCentred), Columns>());
        (IReadOnlyList<Metric> Others, GroupCentred With, double R)? best = null;
        // One alone first, so that a second one is taken only for what it adds.
        foreach (var (a, b) in able.Select(a => (a, a)).Concat(able.SelectMany((a, i) => able.Skip(i + 1).Select(b => (a, b)))))
        {
            List<string> both = [.. days.Athletes.Where(x => a.Has.Contains(x) && b.Has.Contains(x))];
            var key = string.Join('\n', both);
            var with = sets.TryGetValue(key, out var known) ? known : sets[key] = GroupCentred.From(both, squad.Profile);
            if (with.Athletes.Count < Math.Max(wanted, with.Groups + 5)) continue;
            List<(Metric Metric, SeasonValues Values)> pair = [(a.Metric, a.Values), .. b.Metric == a.Metric ? [] : new[] { (b.Metric, b.Values) }];
            if (Explained(Of(values, with).Mean, [.. pair.Select(p => Of(p.Values, with).Mean)]) is { } r && r > (best?.R ?? -1) + Rounding) best = ([.. pair.Select(p => p.Metric)], with, r);
        }

        if (best is not { } chosen) return null;
        OccasionPair Pair(SeasonValues of) => new(Of(of, chosen.With).First, Of(of, chosen.With).Second);
        var share = OwnShare.Of(Pair(values), [.. chosen.Others.Select(m => Pair(squad.Values(m)))], chosen.With.Groups);
        return new(chosen.Others, share, $"{share.N} players on both retest days, values less the mean of their group");

        Columns Of(SeasonValues of, GroupCentred with) => made.TryGetValue((of.Metric, with), out var columns) ? columns : made[(of.Metric, with)] = Centred(of, days, with);
    }

    /// <summary>From one occasion; null when no library metric was done by enough of the athletes.</summary>
    public static (IReadOnlyList<Metric> Others, double? Given, string Basis)? OnOneOccasion(BenchSquad squad, SeasonValues values, SeasonPeriod occasion)
    {
        var own = OccasionValues.On(values, occasion);
        var wanted = Math.Max(squad.Rule.Fewest, squad.Rule.LeastShared * own.Count);
        var others = squad.Library.Select(m => (Metric: m, Values: OccasionValues.On(squad.Values(m), occasion)))
            .Where(o => own.Athletes.Count(a => o.Values.Of(a) is not null) >= wanted).ToList();
        List<(IReadOnlyList<Metric> Others, double R, int N)> tried = [.. others.SelectMany((a, i) => others.Skip(i).Select(b => a.Metric == b.Metric ? [a] : new[] { a, b })).Select(pair =>
        {
            var centred = GroupCentred.From(own.Athletes.Where(a => pair.All(p => p.Values.Of(a) is not null)), squad.Profile);
            var r = centred.Athletes.Count < Math.Max(wanted, centred.Groups + 5) ? null
                : Explained(Logs(centred, a => own.Of(a)!.Value), [.. pair.Select(p => Logs(centred, a => p.Values.Of(a)!.Value))]);
            return r is { } share ? ((IReadOnlyList<Metric>)[.. pair.Select(p => p.Metric)], share, centred.Athletes.Count - centred.Groups) : default((IReadOnlyList<Metric>, double, int)?);
        }).OfType<(IReadOnlyList<Metric>, double, int)>()];
        if (tried.Count == 0) return null;
        var best = tried.OrderByDescending(t => t.R).ThenBy(t => t.Others.Count).ThenBy(t => t.Others[0].Id, StringComparer.Ordinal).First();
        return (best.Others, Math.Max(0, 1 - (1 - best.R) * best.N / (best.N - best.Others.Count)), "one occasion only: without retest days what remains cannot be told from test error");
    }

    private static Columns Centred(SeasonValues values, RetestColumns days, GroupCentred centred)
    {
        var pairs = centred.Athletes.ToDictionary(a => a, a => days.Pair(values, a)!.Value, StringComparer.Ordinal);
        var logs = pairs.Values.All(p => p.First > 0 && p.Second > 0);
        double Scale(double v) => logs ? Math.Log(v) : v;
        return new(centred.Centre(a => Scale(pairs[a].First)), centred.Centre(a => Scale(pairs[a].Second)));
    }

    // Products and powers are sums on the scale of logarithms, so a copy in another unit or a square is seen as what it is.
    private static double[] Logs(GroupCentred centred, Func<string, double> value)
    {
        var logs = centred.Athletes.All(a => value(a) > 0);
        return centred.Centre(a => logs ? Math.Log(value(a)) : value(a));
    }

    private static double? Explained(double[] y, IReadOnlyList<double[]> x)
        => y.All(v => v == 0) || x.Any(c => c.All(v => v == 0)) ? null
            : x.Count == 1 ? Math.Pow(Correlation.Pearson(x[0], y).Value, 2) : ExplainedByTwo(y, x[0], x[1]);

    // R² of two from the three correlations; a pair that says the same counts as one.
    private static double ExplainedByTwo(double[] y, double[] a, double[] b)
    {
        double ya = Correlation.Pearson(y, a).Value, yb = Correlation.Pearson(y, b).Value, ab = Correlation.Pearson(a, b).Value;
        var apart = 1 - ab * ab;
        return apart < 1e-10 ? ya * ya : Math.Clamp((ya * ya + yb * yb - 2 * ya * yb * ab) / apart, 0, 1);
    }
}
